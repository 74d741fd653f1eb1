package rindward.controller.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rindward.controller.daemon.Time;
import rindward.controller.desk.KeptSignIn;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.SignInStore;
import rindward.controller.store.StoreException;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.SignIn;

/** {@code password}: a new one for somebody who forgot theirs, whether the daemon runs or not. */
@Command(
    name = "password",
    description = {
      "Draw a new password for somebody who signs in on the page and has forgotten theirs.",
      "Their devices have to sign in again within a minute. On the page they choose one of their own."
    },
    footer = {"", "Example:", "  rindward password --settings /etc/rindward/rindward.toml Wren"})
final class PasswordCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();

  @Parameters(paramLabel = "NAME", description = "Who has forgotten it.")
  private String name = "";

  @Override
  public Integer call() {
    Optional<Settings> read = settingsOption.read(spec);
    if (read.isEmpty()) {
      return Main.WRONG_USAGE;
    }
    Settings settings = read.get();
    try (Database database = new Database(settings.store())) {
      if (!Files.exists(settings.store())) {
        throw new IOException("There is no database " + settings.store() + ", so nobody is known.");
      }
      return draw(new KeptSignIn(new SignInStore(database)));
    } catch (IOException | StoreException e) {
      return say(spec.commandLine().getErr(), String.valueOf(e.getMessage()), Main.NOT_WELL);
    }
  }

  private int draw(KeptSignIn desk) {
    Optional<String> drawn =
        new SignIn(desk, () -> Time.system().now().at()).drawPassword(name.strip());
    if (drawn.isPresent()) {
      return say(
          spec.commandLine().getOut(),
          name.strip() + " signs in with this password from now on: " + drawn.get(),
          Main.FINE);
    }
    String known = desk.people().stream().map(Person::name).collect(Collectors.joining(", "));
    return say(
        spec.commandLine().getErr(),
        known.isEmpty()
            ? "Nobody signs in yet: the daemon shows a code for the first owner when it starts."
            : "NAME was '" + name + "' but it must be one of: " + known,
        Main.WRONG_USAGE);
  }

  private static int say(PrintWriter to, String sentence, int exit) {
    to.println(sentence);
    to.flush();
    return exit;
  }
}
