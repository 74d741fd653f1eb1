package rindward.controller.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/**
 * One run of the command line, as a person at a terminal sees it.
 *
 * @param exit exit code
 * @param out standard output
 * @param err standard error
 */
public record CommandRun(int exit, String out, String err) {
  public static CommandRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine command =
        Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    int exit = command.execute(args);
    return new CommandRun(exit, out.toString(), err.toString());
  }

  /** Returns standard output read as one JSON document. */
  public JsonNode json() throws JsonProcessingException {
    return new ObjectMapper().readTree(out);
  }
}
