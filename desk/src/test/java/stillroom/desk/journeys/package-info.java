/** The program as a person meets it: in a real browser, by keyboard alone and by touch alone. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.journeys;
