package stillroom.desk.journeys;

import com.microsoft.playwright.ElementHandle;
import java.time.LocalDate;

/**
 * Working a page with one kind of input only. A control is found by the name that a person reads or hears; a name that
 * ends with an ellipsis is only begun. A place is the heading of a section, or words in a row; empty for anywhere.
 */
interface Hands {
    /** Finds a link or button and does not press it. */
    ElementHandle reach(String name, String place);

    void press(String name, String place);

    /** Sets the tick, which is not set yet. */
    void tick(String name);

    /** Puts these words into a field in place of what stands there. */
    void type(String name, String place, String words);

    /** Leaves the field, as one does when all is typed. */
    void leave();

    void date(String name, String place, LocalDate day);

    /** Takes the option that begins with these words. */
    void choose(String name, String place, String option);

    default void press(String name) {
        press(name, "");
    }

    default void type(String name, String words) {
        type(name, "", words);
    }
}
