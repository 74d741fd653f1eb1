package rindward.controller.settings;

import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.Priority;
import rindward.controller.notice.EscalationLine;
import rindward.controller.notice.MailSettings.Security;
import rindward.controller.notice.Person;
import rindward.controller.settings.Calls.Address;
import rindward.controller.settings.Calls.Alive;
import rindward.controller.settings.Calls.MailSetting;

/** Reads how the shed calls for help: people, mail, webhook, broker, and the sign of life. */
final class CallsReader {
  private static final String MAIL = "mail";
  private static final String WEBHOOK = "webhook";
  private static final String MQTT = "mqtt";

  private static final Kind<String> MAIL_ADDRESS =
      Kind.pattern("[^@\\s]+@[^@\\s]+", "be an address, as \"wren@farm.example\"");
  private static final Kind<LocalTime> TIME =
      new Kind<>("be a time of day, as \"07:00\"", LocalTime.NOON, CallsReader::time);
  private static final Kind<URI> WEB_ADDRESS =
      new Kind<>(
          "be an address that begins with http:// or https://",
          URI.create("http://localhost"),
          CallsReader::web);
  private static final Duration MINUTE = Duration.ofMinutes(1);

  private final TableReader top;
  private final Path file;

  private CallsReader(TableReader top, Path file) {
    this.top = top;
    this.file = file;
  }

  /** Reads every table that has to do with it; all may be missing. */
  static Calls read(TableReader top, Path file) {
    return new CallsReader(top, file).calls();
  }

  static boolean isWeb(URI address) {
    return ("http".equals(address.getScheme()) || "https".equals(address.getScheme()))
        && address.getHost() != null;
  }

  private Calls calls() {
    Map<String, TableReader> people = top.table("people").map(TableReader::tables).orElse(Map.of());
    @Nullable TableReader mqtt = top.table(MQTT).orElse(null);
    boolean publishes = mqtt != null && mqtt.optional("publish", Kind.FLAG, true);
    boolean commands = mqtt != null && mqtt.optional("commands", Kind.FLAG, false);
    if (mqtt != null) {
      if (!top.has("broker")) {
        mqtt.problem("publish", "mqtt needs a table [broker] with host = \"...\"");
      }
      mqtt.rejectUnknown();
    }
    Map<String, String> addresses = new LinkedHashMap<>();
    List<Person> persons = new ArrayList<>();
    people.forEach((name, table) -> persons.add(person(name, table, addresses)));
    @Nullable TableReader calls = top.table("calls").orElse(null);
    EscalationLine usual = Calls.NONE.line();
    Kind<Duration> wait = Kind.duration(MINUTE, Duration.ofHours(12));
    Duration answer =
        calls == null
            ? usual.answerWithin()
            : calls.optional("answer_within", wait, usual.answerWithin());
    Duration remind =
        calls == null
            ? usual.remindEvery()
            : calls.optional("remind_every", wait, usual.remindEvery());
    String page =
        calls == null ? "" : calls.find("page", WEB_ADDRESS).map(URI::toString).orElse("");
    if (calls != null) {
      calls.rejectUnknown();
    }
    return new Calls(
        new EscalationLine(persons, answer, remind),
        page,
        top.table(MAIL).map(table -> mail(table, addresses)).orElse(null),
        top.table(WEBHOOK).map(this::webhook).orElse(null),
        top.table("alive").map(this::alive).orElse(null),
        publishes,
        commands);
  }

  private Person person(String name, TableReader table, Map<String, String> addresses) {
    table.find(MAIL, MAIL_ADDRESS).ifPresent(address -> addresses.put(name, address));
    List<String> by = new ArrayList<>();
    List<String> usual = new ArrayList<>();
    if (top.has(MAIL) && addresses.containsKey(name)) {
      usual.add(MAIL);
    }
    if (top.has(WEBHOOK)) {
      usual.add(WEBHOOK);
    }
    if (top.has(MQTT)) {
      usual.add(MQTT);
    }
    for (String channel : table.optional("by", Kind.TEXTS, usual)) {
      if (!Set.of(MAIL, WEBHOOK, MQTT).contains(channel)) {
        table.conflict(channel, "it must be one of mail, webhook, mqtt", "by");
      } else if (!top.has(channel)) {
        table.conflict(channel, "there must be a table [" + channel + "] then", "by");
      } else if (channel.equals(MAIL) && !addresses.containsKey(name)) {
        table.missing(MAIL, "it must be there for somebody who is told by mail");
      }
      by.add(channel);
    }
    if (by.isEmpty()) {
      table.problem(
          "by",
          table.path("by")
              + " was empty but nobody can be told without a [mail], [webhook] or [mqtt]");
    }
    Person person =
        new Person(
            name, priorities(table), table.optional("digest_at", TIME, LocalTime.of(7, 0)), by);
    table.rejectUnknown();
    return person;
  }

  private static Set<Priority> priorities(TableReader table) {
    Set<Priority> wants = EnumSet.noneOf(Priority.class);
    Kind<Priority> kind = Kind.choice(Priority.class);
    for (String word : table.optional("wants", Kind.TEXTS, List.of("wake", "digest", "news"))) {
      try {
        wants.add(Priority.valueOf(word.toUpperCase(Locale.ROOT)));
      } catch (IllegalArgumentException e) {
        table.conflict(word, "it must " + kind.must(), "wants");
      }
    }
    return wants;
  }

  private MailSetting mail(TableReader table, Map<String, String> addresses) {
    Security security = table.optional("security", Kind.choice(Security.class), Security.TLS);
    int usualPort =
        switch (security) {
          case NONE -> 25;
          case STARTTLS -> 587;
          case TLS -> 465;
        };
    String host = table.required("host", Kind.TEXT);
    int port = table.optional("port", Kind.whole(1, 65_535), usualPort);
    String user = table.optional("user", Kind.TEXT, "");
    @Nullable Secret password = Secret.find(table, "password", file);
    if (!user.isEmpty() && password == null) {
      table.missing("password_file", "it or password_env must be there where a user is");
    }
    if (password != null && user.isEmpty()) {
      table.missing("user", "it must be there where a password is");
    }
    String from = table.required("from", MAIL_ADDRESS);
    table.rejectUnknown();
    return new MailSetting(host, port, security, user, password, from, addresses);
  }

  private Address webhook(TableReader table) {
    Address address = address(table);
    table.rejectUnknown();
    return address;
  }

  private Alive alive(TableReader table) {
    Alive alive =
        new Alive(
            address(table),
            table.optional(
                "every", Kind.duration(MINUTE, Duration.ofDays(1)), Duration.ofMinutes(5)));
    table.rejectUnknown();
    return alive;
  }

  private Address address(TableReader table) {
    @Nullable URI plain = table.find("url", WEB_ADDRESS).orElse(null);
    @Nullable Secret kept = Secret.find(table, "url", file);
    if (plain == null && kept == null && !table.has("url")) {
      table.missing("url", "it, url_file or url_env must be there");
    }
    return new Address(plain, kept);
  }

  private static @Nullable LocalTime time(Object value) {
    try {
      return value instanceof String text ? LocalTime.parse(text) : null;
    } catch (DateTimeParseException e) {
      return null;
    }
  }

  private static @Nullable URI web(Object value) {
    try {
      URI address = value instanceof String text ? URI.create(text) : null;
      return address != null && isWeb(address) ? address : null;
    } catch (IllegalArgumentException e) {
      return null;
    }
  }
}
