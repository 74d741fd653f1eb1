package rindward.dashboard.alarms;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/** What the page sends to answer an alarm. */
record AnswerRequest(String alarm, String answer, @Nullable Instant until, @Nullable String code) {
  AnswerRequest {
    JsonBody.needed(alarm, "alarm", 300);
    JsonBody.needed(answer, "answer", 40);
  }
}
