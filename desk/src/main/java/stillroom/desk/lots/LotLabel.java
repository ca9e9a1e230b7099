package stillroom.desk.lots;

/**
 * The label of a bottle, with its code to be scanned.
 *
 * @param path outline of the code's dark squares, in units of one square
 * @param size squares on a side, quiet border included
 */
public record LotLabel(
        String code,
        String material,
        String received,
        String expires,
        String opened,
        String path,
        int size,
        boolean demonstration) {}
