/** Activity of water in concentrated solutions. */
@org.jspecify.annotations.NullMarked
package stillroom.science.activity;
