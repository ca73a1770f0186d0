package dev.lapwing.alerts.domain;

import java.net.InetAddress;
import java.util.List;

/**
 * The networks that are not the public Internet: private, loopback, link-local (cloud metadata services among them),
 * reserved, and those that carry an address of the older version within one of the newer.
 *
 * <p>After the IANA special-purpose address registries (RFC 6890 and its updates), from memory.
 */
final class OwnNetworks {
    private record Network(byte[] start, int bits) {
        boolean contains(byte[] address) {
            if (address.length != start.length) {
                return false;
            }
            for (int bit = 0; bit < bits; bit++) {
                int mask = 0x80 >> bit % 8;
                if ((address[bit / 8] & mask) != (start[bit / 8] & mask)) {
                    return false;
                }
            }
            return true;
        }
    }

    private static final List<Network> ALL = List.of(
            v4(0, 0, 0, 8),
            v4(10, 0, 0, 8),
            v4(100, 64, 0, 10),
            v4(127, 0, 0, 8),
            v4(169, 254, 0, 16),
            v4(172, 16, 0, 12),
            v4(192, 0, 0, 24),
            v4(192, 0, 2, 24),
            v4(192, 88, 99, 24),
            v4(192, 168, 0, 16),
            v4(198, 18, 0, 15),
            v4(198, 51, 100, 24),
            v4(203, 0, 113, 24),
            v4(224, 0, 0, 3),
            v6(0x0000, 0x0000, 8),
            v6(0x0064, 0xff9b, 32),
            v6(0x0100, 0x0000, 64),
            v6(0x2001, 0x0000, 23),
            v6(0x2001, 0x0db8, 32),
            v6(0x2002, 0x0000, 16),
            v6(0x3fff, 0x0000, 20),
            v6(0x5f00, 0x0000, 16),
            v6(0xfc00, 0x0000, 7),
            v6(0xfe80, 0x0000, 9),
            v6(0xff00, 0x0000, 8));

    private OwnNetworks() {}

    static boolean contain(InetAddress address) {
        byte[] bytes = address.getAddress();
        return ALL.stream().anyMatch(network -> network.contains(bytes));
    }

    private static Network v4(int first, int second, int third, int bits) {
        return new Network(new byte[] {(byte) first, (byte) second, (byte) third, 0}, bits);
    }

    private static Network v6(int first, int second, int bits) {
        byte[] start = new byte[16];
        start[0] = (byte) (first >> 8);
        start[1] = (byte) first;
        start[2] = (byte) (second >> 8);
        start[3] = (byte) second;
        return new Network(start, bits);
    }
}
