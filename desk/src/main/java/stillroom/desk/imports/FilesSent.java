package stillroom.desk.imports;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stillroom.desk.imports.Upload.Incoming;
import stillroom.desk.shell.Transfer;
import stillroom.ledger.imports.Bounds;
import stillroom.ledger.imports.SpreadsheetFile;

/**
 * What a form brought: files, or text that was pasted.
 *
 * @param problem why nothing of it can be taken, empty where it can
 */
record FilesSent(List<Incoming> files, String problem) {
    /** Largest form altogether [bytes]. */
    static final long MOST_BYTES = 60_000_000;

    static final int MOST_FILES = 500;
    private static final String TOO_LARGE = "These files are larger than " + MOST_BYTES / 1_000_000
            + " MB together, or one is larger than " + Bounds.FILE_BYTES / 1_000_000
            + " MB. Nothing was read; bring them in in parts.";

    static FilesSent of(Context request) {
        if (request.contentLength() > MOST_BYTES) {
            Transfer.takeOffTheLine(request);
            return new FilesSent(List.of(), TOO_LARGE);
        }
        if (!request.isMultipartFormData()) {
            return pastedOnly(request);
        }
        try {
            return sent(request);
        } catch (RuntimeException refused) {
            Transfer.takeOffTheLine(request);
            return new FilesSent(List.of(), TOO_LARGE);
        }
    }

    private static FilesSent sent(Context request) {
        List<UploadedFile> uploaded = request.uploadedFiles("files").stream()
                .filter(file -> !file.filename().isEmpty() || file.size() > 0)
                .toList();
        if (uploaded.size() > MOST_FILES) {
            return new FilesSent(
                    List.of(), "These are " + uploaded.size() + " files; up to " + MOST_FILES + " go at once.");
        }
        List<Incoming> files = new ArrayList<>();
        for (UploadedFile file : uploaded) {
            files.add(
                    new Incoming(SpreadsheetFile.shown(file.filename()), Transfer.bytes(file, Bounds.FILE_BYTES + 1)));
        }
        return judged(files, request);
    }

    private static FilesSent pastedOnly(Context request) {
        return judged(new ArrayList<>(), request);
    }

    private static FilesSent judged(List<Incoming> files, Context request) {
        String pasted = pasted(request);
        if (!pasted.isBlank()) {
            files.add(new Incoming("Pasted table", pasted.getBytes(StandardCharsets.UTF_8)));
        }
        return files.isEmpty()
                ? new FilesSent(List.of(), "Choose a file, or paste a table.")
                : new FilesSent(List.copyOf(files), "");
    }

    /** The pasted text, tabs and blanks as they came. */
    static String pasted(Context request) {
        try {
            String pasted = request.formParam("pasted");
            return pasted == null ? "" : pasted;
        } catch (RuntimeException unreadable) {
            return "";
        }
    }
}
