/** Whose workshop it is, its balances, where its data lies, and copies of it. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.workshop;
