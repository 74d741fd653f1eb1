package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.TrialChannels;
import rindward.controller.notice.Channel;
import rindward.controller.notice.Notice;
import rindward.controller.notice.Person;
import rindward.controller.settings.Settings;

/** {@code tell}: sends everybody a notice that asks for nothing, to see that it gets through. */
@Command(
    name = "tell",
    description =
        "Send a trial notice to everybody of the settings, or to one, and say of each channel what"
            + " became of it.",
    footer = {
      "",
      "Examples:",
      "  rindward tell --settings shed.toml",
      "  rindward tell --settings shed.toml --person Wren --by mail"
    })
public final class TellCommand extends ShedCommand {
  private static final String TEXT =
      "This is a trial. Nothing is wrong, and nothing needs doing. If you can read this, the shed"
          + " can reach you.";

  @Option(names = "--person", paramLabel = "NAME", description = "Tell only this person.")
  private @Nullable String person;

  @Option(names = "--by", paramLabel = "CHANNEL", description = "Only by mail, webhook or mqtt.")
  private @Nullable String by;

  @Override
  protected int on(Settings settings) {
    PrintWriter out = out();
    int told = 0;
    int failed = 0;
    try (TrialChannels channels = TrialChannels.open(settings)) {
      for (Person one : settings.calls().line().persons()) {
        for (Channel channel : wanted(one, channels.all())) {
          told++;
          failed += send(channel, one, settings, out) ? 0 : 1;
        }
      }
    } catch (IOException e) {
      out.println(e.getMessage());
      failed++;
    }
    if (told == 0 && failed == 0) {
      out.println("Nobody is to be told: add [people.NAME] and a channel to the settings.");
    }
    return told == 0 || failed > 0 ? ExitCode.NOT_WELL : ExitCode.FINE;
  }

  private List<Channel> wanted(Person one, List<Channel> channels) {
    return person != null && !person.equals(one.name())
        ? List.of()
        : channels.stream()
            .filter(channel -> one.channels().contains(channel.name()))
            .filter(channel -> by == null || by.equals(channel.name()))
            .toList();
  }

  private static boolean send(Channel channel, Person one, Settings settings, PrintWriter out) {
    try {
      channel.send(new Notice(one.name(), settings.siteName() + ": a trial notice", TEXT));
      out.println(one.name() + " by " + channel.name() + ": taken.");
      return true;
    } catch (IOException e) {
      out.println(one.name() + " by " + channel.name() + ": not taken, " + e.getMessage() + ".");
      return false;
    }
  }
}
