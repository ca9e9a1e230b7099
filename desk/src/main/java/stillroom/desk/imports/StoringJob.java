package stillroom.desk.imports;

import java.util.List;
import java.util.function.Predicate;
import stillroom.formulary.formula.Product;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.LedgerException;

/**
 * Stores what can be stored of an upload, one thing after the other; each is stored whole or not at all, and what was
 * stored before it was stopped stays.
 *
 * @param soundOnly whether what has a doubt left is passed over
 */
record StoringJob(Upload upload, Storing storing, StoringMaterials materials, boolean soundOnly) {
    static StoringJob of(
            Upload upload, Ledger ledger, java.time.Instant now, java.time.LocalDate today, boolean soundOnly) {
        return new StoringJob(upload, new Storing(ledger, now, today), new StoringMaterials(ledger, today), soundOnly);
    }

    void run(List<HeldSheet> sheets) {
        upload.begin(Upload.Stage.STORING, sheets.size());
        CardNames cards = CardNames.of(storing.ledger());
        for (HeldSheet sheet : sheets) {
            if (upload.isStopAsked()) {
                break;
            }
            SettledFormula.all(sheet, cards).stream()
                    .filter(SettledFormula::take)
                    .forEach(formula -> store(sheet, formula));
            if (!sheet.read().materials().isEmpty()) {
                store(sheet, SettledMaterial.all(sheet, cards));
            }
            upload.step();
        }
        upload.end(upload.isStopAsked() ? Upload.Stage.STOPPED : Upload.Stage.DONE);
    }

    private void store(HeldSheet sheet, SettledFormula formula) {
        List<String> reasons = reasons(formula.obstacles(), formula.doubts());
        String claim = sheet.number() + "/" + formula.number();
        once(claim, sheet, formula.title(), reasons, formula.doubts(), () -> {
            Product product = storing.store(formula, sheet.file(), sheet.grid().name());
            return "/products/" + product.id();
        });
    }

    private void store(HeldSheet sheet, List<SettledMaterial> list) {
        List<SettledMaterial> taken =
                list.stream().filter(SettledMaterial::take).toList();
        List<String> obstacles =
                taken.stream().flatMap(one -> one.obstacles().stream()).toList();
        List<String> doubts = taken.stream()
                .flatMap(one -> one.doubts().stream().map(doubt -> one.read().name() + ": " + doubt))
                .toList();
        once(sheet.number() + "/m", sheet, taken.size() + " materials", reasons(obstacles, doubts), doubts, () -> {
            materials.store(taken, sheet.file());
            return "/materials";
        });
    }

    private List<String> reasons(List<String> obstacles, List<String> doubts) {
        return obstacles.isEmpty() && soundOnly ? doubts : obstacles;
    }

    private void once(
            String claim,
            HeldSheet sheet,
            String what,
            List<String> reasons,
            List<String> doubts,
            java.util.function.Supplier<String> store) {
        Predicate<String> free = upload::claim;
        if (!reasons.isEmpty() && !upload.isStored(claim)) {
            upload.note(new Outcome(sheet.file(), what, "", reasons));
        } else if (free.test(claim)) {
            try {
                upload.note(new Outcome(sheet.file(), what, store.get(), doubts));
            } catch (LedgerException | IllegalStateException | IllegalArgumentException fault) {
                upload.release(claim);
                upload.note(
                        new Outcome(sheet.file(), what, "", List.of("It could not be stored: " + fault.getMessage())));
            }
        }
    }
}
