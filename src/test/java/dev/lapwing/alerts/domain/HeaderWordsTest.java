package dev.lapwing.alerts.domain;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeUtility;
import java.io.UnsupportedEncodingException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** Limits from RFC 2047 sections 2 and 5 and RFC 5322 section 2.1.1; the reader is the mail library, not our code. */
class HeaderWordsTest {
    private static final Pattern ENCODED_WORD = Pattern.compile("=\\?UTF-8\\?B\\?[A-Za-z0-9+/=]*\\?=");

    @Property
    void anyTextIsReadBackAsOneLineAndKeepsTheLimits(@ForAll @StringLength(max = 300) String text)
            throws UnsupportedEncodingException {
        String value = HeaderWords.text("Subject", text);

        assertThat(MimeUtility.decodeText(MimeUtility.unfold(value))).isEqualTo(PlainText.oneLine(text));
        assertLimits("Subject: " + value);
    }

    @Property
    void anyNameIsReadBackAndStaysOneMailbox(@ForAll @StringLength(max = 120) String name) throws AddressException {
        String value = HeaderWords.mailbox("To", name, "tess@haldenridge.example");

        InternetAddress[] read = InternetAddress.parseHeader(MimeUtility.unfold(value), true);
        assertThat(read).hasSize(1);
        assertThat(read[0].getAddress()).isEqualTo("tess@haldenridge.example");
        String readName = read[0].getPersonal() == null ? "" : read[0].getPersonal();
        assertThat(readName).isEqualTo(PlainText.oneLine(name));
        assertLimits("To: " + value);
    }

    @Test
    void plainTextStaysReadable() {
        assertThat(HeaderWords.text("Subject", "Unit H-104: wash, due 3 May 2026"))
                .isEqualTo("Unit H-104: wash, due 3 May 2026");
    }

    @Test
    void textThatLooksLikeAnEncodedWordIsEncodedSoThatItReadsAsWritten() throws UnsupportedEncodingException {
        String value = HeaderWords.text("Subject", "=?UTF-8?Q?Bcc:_x?=");

        assertThat(MimeUtility.decodeText(value)).isEqualTo("=?UTF-8?Q?Bcc:_x?=");
    }

    private static void assertLimits(String header) {
        for (String line : header.split("\r\n", -1)) {
            assertThat(line).doesNotContain("\r", "\n");
            assertThat(line.length()).isLessThanOrEqualTo(line.contains("=?") ? 76 : 78);
            var words = ENCODED_WORD.matcher(line);
            while (words.find()) {
                assertThat(words.group().length()).isLessThanOrEqualTo(75);
                assertThat(wholeCharacters(words.group())).isTrue();
            }
        }
    }

    /** Returns whether an encoded word decodes by itself. */
    private static boolean wholeCharacters(String word) {
        byte[] bytes = Base64.getDecoder().decode(word.substring("=?UTF-8?B?".length(), word.length() - 2));
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException cutInside) {
            return false;
        }
    }
}
