package rindward.controller.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;
import rindward.controller.daemon.BuildVersion;

/** The door of the jar: the one list of commands, and how all of them answer wrong usage. */
@Command(
    name = "rindward",
    description = "Keeps curing and storage rooms right, and an account of every lot.",
    mixinStandardHelpOptions = true,
    scope = ScopeType.INHERIT,
    usageHelpWidth = 100,
    versionProvider = Main.Version.class,
    subcommands = {
      DemoCommand.class,
      RunCommand.class,
      CheckCommand.class,
      CommissionCommand.class,
      CalibrateCommand.class,
      OffCommand.class,
      RoomCommand.class,
      AlarmsCommand.class,
      TellCommand.class,
      PasswordCommand.class,
      BackupCommand.class,
      RestoreCommand.class,
      SimulateCommand.class,
      SizeCommand.class,
      LotCommand.class,
      EatCommand.class,
      TasteCommand.class,
      PanelCommand.class,
      KeepCommand.class,
      VarietyCommand.class,
      ReplayCommand.class,
      AirCommand.class
    },
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    footer = {"", "Example:", "  rindward air --temperature 25 --humidity 60"})
public final class Main implements Callable<Integer> {
  /** All is fine. */
  static final int FINE = 0;

  /** The question was answered, and the answer is that something is not well. */
  static final int NOT_WELL = 1;

  /** Wrong usage or settings: nothing was done. */
  static final int WRONG_USAGE = 2;

  @Spec private CommandSpec spec;

  /** Libraries that say more at their start than a grower wants to read. */
  private static final List<Logger> TALKATIVE =
      List.of(Logger.getLogger("org.eclipse.jetty"), Logger.getLogger("io.javalin"));

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] args) {
    TALKATIVE.forEach(logger -> logger.setLevel(Level.WARNING));
    System.exit(commandLine().execute(args));
  }

  /** Returns the whole command line, writing to standard output and standard error. */
  static CommandLine commandLine() {
    CommandLine main = new CommandLine(new Main());
    readWords(main, main.getCommandSpec());
    return main.setParameterExceptionHandler((wrong, args) -> explain(wrong));
  }

  /**
   * Whatever is one of a few words is read as it is written, in this command and those under it.
   */
  private static void readWords(CommandLine main, CommandSpec command) {
    for (ArgSpec argument : command.args()) {
      for (Class<?> type : argument.auxiliaryTypes()) {
        if (type.isEnum()) {
          readWord(main, type);
        }
      }
    }
    command.subcommands().values().forEach(under -> readWords(main, under.getCommandSpec()));
  }

  private static <W> void readWord(CommandLine main, Class<W> words) {
    main.registerConverter(words, new WordArgument<>(words));
  }

  @Override
  public Integer call() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do, one of: " + String.join(", ", spec.subcommands().keySet()));
  }

  private static int explain(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    PrintWriter err = command.getErr();
    String sentence =
        wrong instanceof UnmatchedArgumentException unknown
            ? "There is no '" + unknown.getUnmatched().get(0) + "' here"
            : wrong.getMessage();
    err.println(name + ": " + sentence + " (see " + name + " --help)");
    err.flush();
    return WRONG_USAGE;
  }

  /** Says which program this is. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"rindward " + BuildVersion.told()};
    }
  }
}
