package tuttarco.musicxml;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * The text of an XML document, in the encoding its byte order mark or its first line names, else UTF-8. A document type
 * line with declarations of its own is refused: no part needs them, and they are what entity bombs are made of.
 */
final class XmlText {
    /** Where an XML declaration must have ended, bytes. */
    private static final int DECLARATION = 200;

    private static final String DOCTYPE = "<!DOCTYPE";
    private static final Pattern ENCODING = Pattern.compile("^<\\?xml[^>]*?encoding\\s*=\\s*[\"']([^\"']*)[\"']");

    private XmlText() {}

    static String of(byte[] content, String fileName) throws InputException {
        Charset charset = charset(content, fileName);
        try {
            String text = charset.newDecoder().decode(ByteBuffer.wrap(content)).toString();
            if (declares(text)) {
                throw new InputException(
                        fileName
                                + ": its DOCTYPE declares entities of its own, which are not read; export the part again without");
            }
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new InputException(
                    fileName + " is not text in " + charset.name() + "; export the part again as uncompressed MusicXML",
                    e);
        }
    }

    /** Whether the document type line has an internal subset: a bracket outside quotes. */
    private static boolean declares(String text) {
        int from = text.indexOf(DOCTYPE);
        char quote = 0;
        for (int i = from; from >= 0 && i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '[' || c == '>') {
                return c == '[';
            }
        }
        return false;
    }

    /** The encoding; UTF-16 only where a byte order mark says so, or a declaration that is not in it. */
    static Charset charset(byte[] content, String fileName) throws InputException {
        int first = content.length < 2 ? 0 : ((content[0] & 0xff) << 8) | (content[1] & 0xff);
        if (first == 0xfeff || first == 0xfffe) {
            return StandardCharsets.UTF_16;
        }
        String start = new String(content, 0, Math.min(DECLARATION, content.length), StandardCharsets.ISO_8859_1);
        Matcher encoding = ENCODING.matcher(start);
        if (!encoding.find()) {
            return StandardCharsets.UTF_8;
        }
        try {
            return Charset.forName(encoding.group(1));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw new InputException(
                    fileName + ": line 1: the encoding '" + Plain.text(encoding.group(1))
                            + "' is not known; export the part again in UTF-8",
                    e);
        }
    }
}
