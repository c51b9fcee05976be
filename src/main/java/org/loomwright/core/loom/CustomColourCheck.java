package org.loomwright.core.loom;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Whether the colours that a loom declares can stand beside those of the code: letters that make no pair readable in two ways, a name and
 * a swatch, nothing twice.
 */
final class CustomColourCheck {

    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L} -]{0,39}");
    private static final Pattern SWATCH = Pattern.compile("#[0-9a-f]{6}");

    private final Catalogue catalogue;
    private final Faults faults;
    private final Set<String> letters = new HashSet<>();
    private final Set<String> names = new HashSet<>();

    CustomColourCheck(Catalogue catalogue, Faults faults) {
        this.catalogue = catalogue;
        this.faults = faults;
        catalogue.colours().forEach(colour -> names.add(lowerCase(colour.name())));
    }

    /** @return the catalogue with those colours that can be told from every other by their letters */
    Catalogue check(List<CustomColour> colours) {
        for (int i = 0; i < colours.size(); i++) {
            Subject subject = new Subject(ThingKind.LOOM, "", "/customColours/" + i);
            checkLetters(colours.get(i), subject);
            checkLook(colours.get(i), subject);
        }
        List<BaseColour> sound =
                colours.stream()
                        .filter(colour -> letters.remove(colour.letters()))
                        .map(CustomColour::basic)
                        .toList();
        return catalogue.withOwnColours(sound);
    }

    private void checkLetters(CustomColour colour, Subject subject) {
        if (!WireColour.isBasic(colour.letters())) {
            faults.add(
                    "custom-colour-letters",
                    subject,
                    "The own colour '%s' must be one capital other than L and X, or X and another capital: other letters could be read as a body with a tracer."
                            .formatted(colour.letters()));
        } else if (catalogue.findColour(colour.letters()).isPresent()) {
            faults.add(
                    "custom-colour-in-code",
                    subject,
                    "The own colour %s has letters that the code has for another colour."
                            .formatted(colour.letters()));
        } else {
            faults.addUnless(
                    letters.add(colour.letters()),
                    "custom-colour-twice",
                    subject,
                    "The own colour %s is declared more than once.",
                    colour.letters());
        }
    }

    private void checkLook(CustomColour colour, Subject subject) {
        faults.addUnless(
                NAME.matcher(colour.name()).matches(),
                "custom-colour-name",
                subject,
                "The name '%s' of the own colour %s must be 1 to 40 letters, spaces or dashes, a"
                        + " letter first.",
                colour.name(),
                colour.letters());
        faults.addUnless(
                names.add(lowerCase(colour.name())),
                "custom-colour-name-twice",
                subject,
                "The name '%s' of the own colour %s is the name of another colour.",
                colour.name(),
                colour.letters());
        faults.addUnless(
                SWATCH.matcher(colour.swatch()).matches(),
                "custom-colour-swatch",
                subject,
                "The swatch '%s' of the own colour %s must be # and six of 0-9 and a-f.",
                colour.swatch(),
                colour.letters());
    }

    private static String lowerCase(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
