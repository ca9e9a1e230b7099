/** Formulas as files of their own, in and out: to be sent, compared, and kept under version control. */
@NullMarked
package stillroom.desk.files;

import org.jspecify.annotations.NullMarked;
