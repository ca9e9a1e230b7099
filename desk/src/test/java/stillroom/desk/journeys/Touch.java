package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.ElementHandle;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.time.LocalDate;
import java.util.List;

/** Taps, and the letters of the keyboard on the glass into the field that was tapped. */
final class Touch implements Hands {
    private final Page page;
    private final Sight sight;

    Touch(Page page, Sight sight) {
        this.page = page;
        this.sight = sight;
    }

    @Override
    public ElementHandle reach(String name, String place) {
        return reach("press", name, place);
    }

    private ElementHandle reach(String kind, String name, String place) {
        sight.calm();
        ElementHandle found = page.evaluateHandle(
                        "([kind, name, place]) => bench.find(kind, name, place)", List.of(kind, name, place))
                .asElement();
        if (found == null) {
            throw new AssertionError("nothing to tap is named \"" + name + "\""
                    + (place.isEmpty() ? "" : " in \"" + place + "\"") + " on " + page.url());
        }
        return found;
    }

    /** Taps fail where something else lies over the control. */
    private ElementHandle tapped(String kind, String name, String place) {
        ElementHandle found = reach(kind, name, place);
        found.tap(new ElementHandle.TapOptions().setTimeout(Sight.PATIENCE_MILLIS));
        return found;
    }

    @Override
    public void press(String name, String place) {
        sight.leaveBy(reach(name, place), () -> tapped("press", name, place));
    }

    @Override
    public void tick(String name) {
        assertThat(tapped("tick", name, "").isChecked()).as(name).isTrue();
    }

    @Override
    public void type(String name, String place, String words) {
        ElementHandle field = tapped("write", name, place);
        field.selectText();
        page.keyboard().type(words);
    }

    @Override
    public void leave() {
        page.tap("h1");
    }

    /** The picker that opens belongs to the tablet, not to the page; this stands in for a choice in it. */
    @Override
    public void date(String name, String place, LocalDate day) {
        tapped("write", name, place).fill(day.toString());
    }

    /** As with dates, the list that opens is the tablet's. */
    @Override
    public void choose(String name, String place, String option) {
        ElementHandle list = tapped("choose", name, place);
        Object label = list.evaluate(
                "(list, option) => [...list.options].map((one) => one.label).find((one) => one.startsWith(option))",
                option);
        list.selectOption(new SelectOption().setLabel(String.valueOf(label)));
    }
}
