/** Documents on materials, lots and products: what is there, and when it is to be looked at again. */
@NullMarked
package stillroom.desk.papers;

import org.jspecify.annotations.NullMarked;
