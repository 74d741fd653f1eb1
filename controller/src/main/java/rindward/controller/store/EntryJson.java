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
import rindward.controller.lot.AlarmAnswered;
import rindward.controller.lot.Entry;
import rindward.controller.lot.OutputTried;
import rindward.controller.lot.ProbeCalibrated;
import rindward.controller.lot.RoomAsked;
import rindward.controller.lot.Tasting;
import rindward.controller.lot.VarietyDecided;
import rindward.controller.lot.WorkAnnounced;

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
    @JsonSubTypes.Type(value = Entry.Harvested.class, name = "harvested"),
    @JsonSubTypes.Type(value = Entry.Moved.class, name = "moved"),
    @JsonSubTypes.Type(value = Entry.AccuracyStated.class, name = "accuracy"),
    @JsonSubTypes.Type(value = OutputTried.class, name = "output-tried"),
    @JsonSubTypes.Type(value = RoomAsked.class, name = "room-asked"),
    @JsonSubTypes.Type(value = AlarmAnswered.class, name = "alarm-answered"),
    @JsonSubTypes.Type(value = WorkAnnounced.class, name = "work-announced"),
    @JsonSubTypes.Type(value = ProbeCalibrated.class, name = "probe-calibrated"),
    @JsonSubTypes.Type(value = Entry.Corrected.class, name = "corrected"),
    @JsonSubTypes.Type(value = Entry.Planted.class, name = "planted"),
    @JsonSubTypes.Type(value = Entry.Weighed.class, name = "weighed"),
    @JsonSubTypes.Type(value = Entry.Culled.class, name = "culled"),
    @JsonSubTypes.Type(value = Entry.Used.class, name = "used"),
    @JsonSubTypes.Type(value = Entry.Recounted.class, name = "recounted"),
    @JsonSubTypes.Type(value = Entry.Reserved.class, name = "reserved"),
    @JsonSubTypes.Type(value = Entry.RipenessNoted.class, name = "ripeness"),
    @JsonSubTypes.Type(value = Entry.FrostNoted.class, name = "frost"),
    @JsonSubTypes.Type(value = Entry.FieldDayNoted.class, name = "field-day"),
    @JsonSubTypes.Type(value = Entry.OffTypeNoted.class, name = "off-type"),
    @JsonSubTypes.Type(value = Entry.Noted.class, name = "noted"),
    @JsonSubTypes.Type(value = Entry.Attested.class, name = "attested"),
    @JsonSubTypes.Type(value = Entry.MisfitAccepted.class, name = "misfit-accepted"),
    @JsonSubTypes.Type(value = Entry.Withdrawn.class, name = "withdrawn"),
    @JsonSubTypes.Type(value = Entry.KitchenTasted.class, name = "kitchen-taste"),
    @JsonSubTypes.Type(value = Tasting.SessionPlanned.class, name = "session-planned"),
    @JsonSubTypes.Type(value = Tasting.SampleCooked.class, name = "sample-cooked"),
    @JsonSubTypes.Type(value = Tasting.Scored.class, name = "scored"),
    @JsonSubTypes.Type(value = Tasting.UsesTicked.class, name = "uses-ticked"),
    @JsonSubTypes.Type(value = Tasting.TakenBack.class, name = "taken-back"),
    @JsonSubTypes.Type(value = Tasting.SessionClosed.class, name = "session-closed"),
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
