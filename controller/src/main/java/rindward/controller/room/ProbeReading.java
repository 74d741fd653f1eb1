package rindward.controller.room;

import org.jspecify.annotations.Nullable;
import rindward.hardware.Reading;

/**
 * The latest that is known from one probe of a room.
 *
 * @param probe its name
 * @param place where it hangs
 * @param reading its last good value; null if there has been none since the start
 * @param takenNanos when that was, on the monotonic clock
 * @param failure why the newest attempt failed, in one sentence; null if it did not
 */
public record ProbeReading(
    String probe,
    ProbePlace place,
    @Nullable Reading reading,
    long takenNanos,
    @Nullable String failure) {}
