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
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.WordArgument;
import rindward.controller.command.demo.DemoCommand;
import rindward.controller.command.lot.EatCommand;
import rindward.controller.command.lot.LotCommand;
import rindward.controller.command.panel.PanelCommand;
import rindward.controller.command.panel.TasteCommand;
import rindward.controller.command.shed.AirCommand;
import rindward.controller.command.shed.AlarmsCommand;
import rindward.controller.command.shed.BackupCommand;
import rindward.controller.command.shed.CalibrateCommand;
import rindward.controller.command.shed.CheckCommand;
import rindward.controller.command.shed.CommissionCommand;
import rindward.controller.command.shed.HealthCommand;
import rindward.controller.command.shed.OffCommand;
import rindward.controller.command.shed.PageCommand;
import rindward.controller.command.shed.PasswordCommand;
import rindward.controller.command.shed.ReplayCommand;
import rindward.controller.command.shed.RestoreCommand;
import rindward.controller.command.shed.RoomCommand;
import rindward.controller.command.shed.RunCommand;
import rindward.controller.command.shed.SimulateCommand;
import rindward.controller.command.shed.SizeCommand;
import rindward.controller.command.shed.TellCommand;
import rindward.controller.command.variety.KeepCommand;
import rindward.controller.command.variety.VarietyCommand;
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
      PageCommand.class,
      HealthCommand.class,
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
    return ExitCode.WRONG_USAGE;
  }

  /** Says which program this is. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"rindward " + BuildVersion.told()};
    }
  }
}
