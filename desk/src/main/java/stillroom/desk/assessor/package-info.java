/** What a safety assessor asks for about one version of a formula, in one file; what is missing stands at the front. */
@NullMarked
package stillroom.desk.assessor;

import org.jspecify.annotations.NullMarked;
