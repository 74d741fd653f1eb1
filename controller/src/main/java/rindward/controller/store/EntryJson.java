package rindward.controller.store;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.deser.std.StringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Planted;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Used;
import rindward.controller.journal.UsesTicked;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.journal.Weighed;
import rindward.controller.journal.Withdrawn;
import rindward.controller.journal.WorkAnnounced;

/**
 * How an entry is written down. The words here are on disks for ten years: a kind may be added,
 * none renamed.
 */
final class EntryJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .addModule(new SimpleModule().addDeserializer(String.class, new OneOfEach()))
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .serializationInclusion(JsonInclude.Include.NON_NULL)
          .addMixIn(Entry.class, Kinds.class)
          .build();

  private EntryJson() {}

  /** Years of entries name the same few crops, places and people: one string of each will do. */
  private static final class OneOfEach extends StdScalarDeserializer<String> {
    private static final long serialVersionUID = 1;

    OneOfEach() {
      super(String.class);
    }

    @Override
    public String deserialize(JsonParser parser, DeserializationContext context)
        throws IOException {
      return StringDeserializer.instance.deserialize(parser, context).intern();
    }
  }

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  @JsonSubTypes({
    @JsonSubTypes.Type(value = Harvested.class, name = "harvested"),
    @JsonSubTypes.Type(value = Moved.class, name = "moved"),
    @JsonSubTypes.Type(value = AccuracyStated.class, name = "accuracy"),
    @JsonSubTypes.Type(value = OutputTried.class, name = "output-tried"),
    @JsonSubTypes.Type(value = RoomAsked.class, name = "room-asked"),
    @JsonSubTypes.Type(value = AlarmAnswered.class, name = "alarm-answered"),
    @JsonSubTypes.Type(value = WorkAnnounced.class, name = "work-announced"),
    @JsonSubTypes.Type(value = ProbeCalibrated.class, name = "probe-calibrated"),
    @JsonSubTypes.Type(value = Corrected.class, name = "corrected"),
    @JsonSubTypes.Type(value = Planted.class, name = "planted"),
    @JsonSubTypes.Type(value = Weighed.class, name = "weighed"),
    @JsonSubTypes.Type(value = Culled.class, name = "culled"),
    @JsonSubTypes.Type(value = Used.class, name = "used"),
    @JsonSubTypes.Type(value = Recounted.class, name = "recounted"),
    @JsonSubTypes.Type(value = Reserved.class, name = "reserved"),
    @JsonSubTypes.Type(value = RipenessNoted.class, name = "ripeness"),
    @JsonSubTypes.Type(value = FrostNoted.class, name = "frost"),
    @JsonSubTypes.Type(value = FieldDayNoted.class, name = "field-day"),
    @JsonSubTypes.Type(value = OffTypeNoted.class, name = "off-type"),
    @JsonSubTypes.Type(value = Noted.class, name = "noted"),
    @JsonSubTypes.Type(value = Attested.class, name = "attested"),
    @JsonSubTypes.Type(value = MisfitAccepted.class, name = "misfit-accepted"),
    @JsonSubTypes.Type(value = Withdrawn.class, name = "withdrawn"),
    @JsonSubTypes.Type(value = KitchenTasted.class, name = "kitchen-taste"),
    @JsonSubTypes.Type(value = SessionPlanned.class, name = "session-planned"),
    @JsonSubTypes.Type(value = SampleCooked.class, name = "sample-cooked"),
    @JsonSubTypes.Type(value = Scored.class, name = "scored"),
    @JsonSubTypes.Type(value = UsesTicked.class, name = "uses-ticked"),
    @JsonSubTypes.Type(value = TakenBack.class, name = "taken-back"),
    @JsonSubTypes.Type(value = SessionClosed.class, name = "session-closed"),
    @JsonSubTypes.Type(value = VarietyDecided.class, name = "variety-decided")
  })
  @JsonIgnoreProperties("subject")
  private interface Kinds {}

  static String write(Entry entry) {
    try {
      return MAPPER.writerFor(Entry.class).writeValueAsString(entry);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("an entry cannot be written: " + entry, e);
    }
  }

  /**
   * Reads an entry back.
   *
   * @throws IllegalArgumentException when a newer version of this program wrote it
   */
  static Entry read(String body) {
    try {
      return MAPPER.readValue(body, Entry.class);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("an entry of the journal cannot be read: " + body, e);
    }
  }
}
