package dev.lapwing.alerts.mail;

import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;

/** Reads mail addresses strictly. */
final class Addresses {
    private Addresses() {}

    /** Returns the bare address, or fails when it is anything but one plain address with a domain. */
    static String bare(String address) throws AddressException {
        InternetAddress read = new InternetAddress(address.strip(), true);
        boolean plain = address.strip().equals(read.getAddress());
        if (!plain || read.getAddress().indexOf('@') < 1 || !isAscii(read.getAddress())) {
            throw new AddressException("not one plain address", address);
        }
        return read.getAddress();
    }

    /** Returns the sender, who may have a name. */
    static InternetAddress sender(String from) throws AddressException {
        InternetAddress[] read = InternetAddress.parse(from, true);
        if (read.length != 1) {
            throw new AddressException("not one address", from);
        }
        bare(read[0].getAddress());
        return read[0];
    }

    private static boolean isAscii(String text) {
        return text.chars().allMatch(c -> c > ' ' && c < 127);
    }
}
