package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.Time;
import rindward.controller.desk.KeptSignIn;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.SignInStore;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.SignIn;

/** {@code password}: a new one for somebody who forgot theirs, whether the daemon runs or not. */
@Command(
    name = "password",
    description = {
      "Draw a new password for somebody who signs in on the page and has forgotten theirs.",
      "Their devices have to sign in again within a minute. On the page they choose one of their"
          + " own."
    },
    footer = {"", "Example:", "  rindward password --settings /etc/rindward/rindward.toml Wren"})
public final class PasswordCommand extends ShedCommand {
  @Parameters(paramLabel = "NAME", description = "Who has forgotten it.")
  private String name = "";

  @Override
  protected int on(Settings settings) throws IOException {
    try (Database database = new Database(settings.store())) {
      if (!Files.exists(settings.store())) {
        throw new IOException("There is no database " + settings.store() + ", so nobody is known.");
      }
      return draw(new KeptSignIn(new SignInStore(database)));
    }
  }

  private int draw(KeptSignIn desk) {
    Optional<String> drawn =
        new SignIn(desk, () -> Time.system().now().at()).drawPassword(name.strip());
    if (drawn.isPresent()) {
      return say(
          name.strip() + " signs in with this password from now on: " + drawn.get(), ExitCode.FINE);
    }
    String known = desk.people().stream().map(Person::name).collect(Collectors.joining(", "));
    return complain(
        known.isEmpty()
            ? "Nobody signs in yet: the daemon shows a code for the first owner when it starts."
            : "NAME was '" + name + "' but it must be one of: " + known,
        ExitCode.WRONG_USAGE);
  }
}
