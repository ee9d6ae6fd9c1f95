package tuttarco.align;

import java.util.Locale;
import tuttarco.files.Plain;

/**
 * Some bars of the part and when they were heard.
 *
 * @param fromBar the first of them, as printed; {@code toBar} the last
 * @param fromS when that begins, seconds from the clip's start; {@code toS} when the last is left
 * @param doubt 0 if nothing else fits the sound, 1 where it fits no better than it may by chance
 */
public record HeardPassage(String fromBar, String toBar, double fromS, double toS, double doubt) {
    /** As people say it, with the doubt in hundredths: {@code Bars 17 to 24 are heard from 42.3 to 61.0 s, doubt 70 %.} */
    public String spoken() {
        return String.format(
                Locale.ROOT,
                "Bars %s to %s are heard from %.1f to %.1f s, doubt %.0f %%.",
                Plain.text(fromBar),
                Plain.text(toBar),
                fromS,
                toS,
                100 * doubt);
    }
}
