/** The frame that all pages live in: layout, looks, safety of requests, reading of forms, faults. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.shell;
