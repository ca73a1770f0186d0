package dev.lapwing.alerts.domain;

import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;

/**
 * Says to which addresses webhooks may go: by HTTPS to the public Internet, so that nobody can have this service call
 * into the network it stands in.
 */
public final class HookAddress {
    private static final int LONGEST = 500;

    private HookAddress() {}

    /** Returns why a text is no address of a target, or empty when it is one. Where it leads is asked separately. */
    public static Optional<String> malformed(String text) {
        if (text.length() > LONGEST) {
            return Optional.of("is longer than " + LONGEST + " characters");
        }
        try {
            var uri = new URI(text);
            boolean web = "https".equalsIgnoreCase(uri.getScheme()) || "http".equalsIgnoreCase(uri.getScheme());
            if (!web || uri.getHost() == null || uri.getPort() == 0 || uri.getPort() > 65_535) {
                return Optional.of("must be like https://host.example/path");
            }
            if (uri.getRawUserInfo() != null || uri.getRawFragment() != null) {
                return Optional.of("must have no user name and no fragment");
            }
            return Optional.empty();
        } catch (URISyntaxException notOne) {
            return Optional.of("must be like https://host.example/path");
        }
    }

    /**
     * Returns why nothing is sent to where an address leads, or empty when it may be.
     *
     * @param leadsTo what the host's name resolves to now
     * @param allowPrivate whether targets in our own network are allowed
     */
    public static Optional<String> forbidden(URI address, List<InetAddress> leadsTo, boolean allowPrivate) {
        boolean loopback = leadsTo.stream().allMatch(InetAddress::isLoopbackAddress);
        if ("http".equalsIgnoreCase(address.getScheme()) && !loopback) {
            return Optional.of("must begin with https: what is sent over http can be read on the way");
        }
        if (!allowPrivate && leadsTo.stream().anyMatch(OwnNetworks::contain)) {
            return Optional.of("leads into a private or reserved network, which is not allowed here");
        }
        return Optional.empty();
    }
}
