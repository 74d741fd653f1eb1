package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordingFormatTest {
  @Test
  void columns_mayBeNamesWithCommas() {
    Columns columns = Columns.parse("temperature=Temp, shade, time=When");
    assertThat(columns).isEqualTo(new Columns(new Column("When"), new Column("Temp, shade"), null));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "time=1", "1,2,3", "time=1,time=2,temperature=3", "temperature=2"})
  void columnsThatDoNotNameTimeAndTemperature_areRefused(String text) {
    assertThatThrownBy(() -> Columns.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("columns was '" + text + "' but it must be like time=2");
  }

  @Test
  void columnsCountFromOne() {
    assertThatThrownBy(() -> new Column("0"))
        .hasMessage("column was '0' but numbers must lie in 1..9999");
    assertThatThrownBy(() -> new Column("10000"))
        .hasMessage("column was '10000' but numbers must lie in 1..9999");
    assertThatThrownBy(() -> new Column(" "))
        .hasMessage("column was '' but it must be a number or a header name");
  }

  @Test
  void rowFilter_needsAColumnAndAValue() {
    assertThat(RowFilter.parse("Probe = north wall"))
        .isEqualTo(new RowFilter(new Column("Probe"), "north wall"));
    assertThatThrownBy(() -> RowFilter.parse("4"))
        .hasMessage("row filter was '4' but it must be a column and a value, such as 4=1");
  }

  @Test
  void decimalComma_needsAnotherDelimiter() {
    Columns columns = Columns.parse("time=1,temperature=2");
    TimeFormat iso = TimeFormat.of("iso", ZoneOffset.UTC);
    assertThatThrownBy(() -> new RecordingFormat(columns, List.of(), iso, ',', true, false))
        .hasMessage(
            "delimiter was ',' but with a decimal comma it must be another character, such as ';'");
  }

  @Test
  void unknownTimeFormat_isRefused() {
    assertThatThrownBy(() -> TimeFormat.of("epoch-hours", ZoneOffset.UTC))
        .hasMessageStartingWith("time format was 'epoch-hours' but it must be epoch-millis");
  }
}
