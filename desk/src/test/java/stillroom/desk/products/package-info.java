/** The pages of products, asked as a browser would ask. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.products;
