package stillroom.desk.packs;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.pack.Pack;
import stillroom.formulary.pack.PackCount;
import stillroom.formulary.pack.PackLot;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.document.Happenings;

/** The containers on the shelf: kinds, lots, and how many are left of each. */
public record PackShelf(Desk desk) {
    public Drawer<Pack> packs() {
        return desk.ledger().drawer("pack", Pack.class);
    }

    public Drawer<PackLot> lots() {
        return desk.ledger().drawer("pack-lot", PackLot.class);
    }

    private Happenings<PackCount> counts() {
        return desk.ledger().happenings("pack-lot", PackCount.class);
    }

    public List<PackLot> lotsOf(Pack pack) {
        return lots().list().stream()
                .filter(lot -> lot.pack().equals(pack.name()))
                .toList();
    }

    public List<PackCount> countsOf(PackLot lot) {
        return counts().of(lot.code());
    }

    /** Received less filled plus what counts corrected; may be below zero: the book never blocks the hand. */
    public int onHand(PackLot lot) {
        int corrected = countsOf(lot).stream().mapToInt(PackCount::correction).sum();
        return lot.received() - desk.ledger().batches().packsUsed(lot.code()) + corrected;
    }

    public void count(PackLot lot, int found, String by, String reason) {
        desk.ledger().together(() -> {
            counts().add(lot.code(), desk.now(), new PackCount(desk.now(), by, found, found - onHand(lot), reason));
            return true;
        });
    }

    /** A lot with its kind, where both are on the shelf. */
    public Optional<Pack> packOf(PackLot lot) {
        return packs().read(lot.pack());
    }
}
