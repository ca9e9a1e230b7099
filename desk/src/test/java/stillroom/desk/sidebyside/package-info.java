/** Tests of versions and trials beside each other. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.sidebyside;
