package stillroom.desk.cli.formula;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;

/** What a command says of one file, both ways. */
record Answer(Status status, Supplier<ObjectNode> json, Supplier<String> text) {}
