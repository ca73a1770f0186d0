package dev.lapwing.demo;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Names the things of the demo, so that the same fleet has the same ids wherever it is loaded. */
final class DemoIds {
    private DemoIds() {}

    static UUID of(Object... parts) {
        var name = new StringBuilder("halden ridge");
        for (Object part : parts) {
            name.append('/').append(part);
        }
        return UUID.nameUUIDFromBytes(name.toString().getBytes(StandardCharsets.UTF_8));
    }
}
