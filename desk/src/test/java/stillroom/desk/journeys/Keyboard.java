package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.ElementHandle;
import com.microsoft.playwright.Page;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** Tab, Enter, arrows and letters; nothing else. */
final class Keyboard implements Hands {
    private static final int MOST_TABS = 160;
    private static final int MOST_OPTIONS = 40;
    /** The order in which the browser of the tests asks for the parts of a date. */
    private static final DateTimeFormatter PARTS = DateTimeFormatter.ofPattern("MMddyyyy");

    /** Nothing where the control has the focus, else what has it. */
    private static final String PASSED = """
            ([kind, name, place]) => bench.is(document.activeElement, kind, name, place)
              ? null : bench.nameOf(document.activeElement).slice(0, 60)""";

    private final Page page;
    private final Sight sight;

    Keyboard(Page page, Sight sight) {
        this.page = page;
        this.sight = sight;
    }

    @Override
    public ElementHandle reach(String name, String place) {
        return reach("press", name, place);
    }

    private ElementHandle reach(String kind, String name, String place) {
        sight.calm();
        List<String> passed = new ArrayList<>();
        for (int tabs = 0; tabs <= MOST_TABS; tabs++) {
            Object other = page.evaluate(PASSED, List.of(kind, name, place));
            if (other == null) {
                return seen(name);
            }
            passed.add(other.toString());
            page.keyboard().press("Tab");
        }
        throw new AssertionError(MOST_TABS + " tabs do not lead to \"" + name + "\""
                + (place.isEmpty() ? "" : " in \"" + place + "\"") + " on " + page.url() + "; they pass "
                + passed.stream().distinct().toList());
    }

    /** What has the focus shows it, and is on the screen. */
    private ElementHandle seen(String name) {
        ElementHandle focused =
                page.evaluateHandle("() => document.activeElement").asElement();
        boolean visible = (boolean) focused.evaluate("""
                (element) => {
                  const box = element.getBoundingClientRect();
                  const inView = box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth;
                  return inView && element.matches(':focus-visible') && getComputedStyle(element).outlineStyle !== 'none';
                }""");
        if (!visible) {
            throw new AssertionError("the focus on \"" + name + "\" cannot be seen on " + page.url());
        }
        return focused;
    }

    @Override
    public void press(String name, String place) {
        ElementHandle control = reach(name, place);
        sight.leaveBy(control, () -> page.keyboard().press("Enter"));
    }

    @Override
    public void tick(String name) {
        ElementHandle box = reach("tick", name, "");
        page.keyboard().press("Space");
        assertThat(box.isChecked()).as(name).isTrue();
    }

    @Override
    public void type(String name, String place, String words) {
        reach("write", name, place);
        page.keyboard().press("Control+a");
        page.keyboard().type(words);
    }

    @Override
    public void leave() {
        page.keyboard().press("Tab");
    }

    @Override
    public void date(String name, String place, LocalDate day) {
        reach("write", name, place);
        page.keyboard().type(PARTS.format(day));
    }

    @Override
    public void choose(String name, String place, String option) {
        ElementHandle list = reach("choose", name, place);
        page.keyboard().press("Home");
        for (int steps = 0; steps <= MOST_OPTIONS; steps++) {
            sight.calm();
            if (chosen(list).startsWith(option)) {
                page.keyboard().press("Tab");
                return;
            }
            page.keyboard().press("ArrowDown");
        }
        throw new AssertionError("no \"" + option + "\" in the list \"" + name + "\" on " + page.url());
    }

    private static String chosen(ElementHandle list) {
        return String.valueOf(list.evaluate("(list) => list.selectedOptions[0]?.textContent.trim() ?? ''"));
    }
}
