package stillroom.science.blend;

/**
 * Asked again and again while a search runs; says when it is to stop with what it has. A clock, a person's stop button or a
 * count may stand behind it.
 */
@FunctionalInterface
public interface Patience {
    Patience ENDLESS = progress -> false;

    boolean isOver(Progress progress);
}
