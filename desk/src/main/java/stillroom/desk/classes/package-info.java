/** A class: one formula version for several people, with kit list, premix, sheets, a grid of what was weighed, and labels to take home. */
@NullMarked
package stillroom.desk.classes;

import org.jspecify.annotations.NullMarked;
