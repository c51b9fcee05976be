package org.loomwright.core.finder;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finder.SeenColour.Option;
import org.loomwright.core.finder.SeenPart.Kind;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Reads what somebody says about a colour, in any case of letters.
 *
 * <p>Either codes joined by {@code or} ({@code GN or GP}), or a body, and behind {@code with} or a stroke a tracer. Each is a list of
 * colours by name or letters; {@code dark}, {@code light}, {@code faded}, {@code unknown}, and {@code plain} for no tracer.
 */
final class ColourReader {

    static final int LONGEST = 200;

    private static final Set<String> FILLERS =
            Set.of(
                    "a", "an", "the", "or", "tracer", "stripe", "line", "wire", "maybe", "perhaps",
                    "body");
    private static final Set<String> UNKNOWN = Set.of("unknown", "?", "some", "any", "colour");
    private static final Set<String> NONE = Set.of("plain", "no", "none", "without");
    private static final Set<String> OLD = Set.of("faded", "dirty", "old", "bleached");
    private static final Map<String, String> OTHER_NAMES =
            Map.of("grey", "S", "gray", "S", "violet", "P", "mauve", "P", "tan", "W", "cream", "W");

    /** Between dark and light, by the brightness of the swatch, 0 to 255: own choice. */
    private static final int DARK_BELOW = 110;

    private static final int LIGHT_FROM = 130;

    private final Catalogue catalogue;
    private final Map<String, String> names = new HashMap<>(OTHER_NAMES);

    ColourReader(Catalogue catalogue) {
        this.catalogue = catalogue;
        catalogue
                .coloursWithOwn()
                .forEach(
                        colour ->
                                names.put(
                                        colour.name().toLowerCase(Locale.ROOT), colour.letters()));
    }

    Outcome<SeenColour> read(String text) {
        if (text.length() > LONGEST) {
            return refused(
                    "finder.too-long",
                    "A colour is described in at most %d characters, not %d."
                            .formatted(LONGEST, text.length()));
        }
        List<String> words = words(text);
        if (words.isEmpty()) {
            return Outcome.accepted(
                    new SeenColour(List.of(new Option(SeenPart.UNKNOWN, SeenPart.UNSAID))));
        }
        List<String> unread = new ArrayList<>();
        SeenColour seen = areCodes(words) ? codes(words) : described(words, unread);
        return unread.isEmpty()
                ? Outcome.accepted(seen)
                : refused("finder.word-unknown", unknownWords(unread));
    }

    private static Outcome<SeenColour> refused(String code, String text) {
        return Outcome.rejected(
                List.of(Finding.fault(code, Subject.of(ThingKind.REQUEST, ""), text)));
    }

    private String unknownWords(List<String> unread) {
        String known =
                catalogue.coloursWithOwn().stream()
                        .map(colour -> "%s (%s)".formatted(colour.name(), colour.letters()))
                        .collect(Collectors.joining(", "));
        return "'%s' is no colour that can be looked for. Colours are %s; dark, light, faded, unknown and plain help too."
                .formatted(String.join("', '", unread), known);
    }

    private static List<String> words(String text) {
        String spaced =
                text.toLowerCase(Locale.ROOT)
                        .replace("/", " with ")
                        .replace("?", " ? ")
                        .replaceAll("[,;.()-]", " ");
        return Arrays.stream(spaced.strip().split("\\s+")).filter(it -> !it.isEmpty()).toList();
    }

    /** Two letters or more that are a code by themselves, or several such joined by {@code or}. */
    private boolean areCodes(List<String> words) {
        return words.stream().allMatch(word -> word.equals("or") || isCode(word))
                && words.stream().anyMatch(this::isCode);
    }

    private boolean isCode(String word) {
        String letters = word.toUpperCase(Locale.ROOT);
        return WireColour.isWellFormed(letters) && catalogue.hasColour(WireColour.parse(letters));
    }

    private SeenColour codes(List<String> words) {
        return new SeenColour(
                words.stream()
                        .filter(this::isCode)
                        .map(word -> WireColour.parse(word.toUpperCase(Locale.ROOT)))
                        .flatMap(colour -> SeenColour.exactly(colour).options().stream())
                        .toList());
    }

    private SeenColour described(List<String> words, List<String> unread) {
        int with = words.indexOf("with");
        List<String> bodyWords = with < 0 ? words : words.subList(0, with);
        boolean isPlain = bodyWords.stream().anyMatch(NONE::contains);
        SeenPart body =
                part(bodyWords.stream().filter(word -> !NONE.contains(word)).toList(), unread);
        SeenPart tracer = isPlain ? SeenPart.NONE : SeenPart.UNSAID;
        if (with >= 0) {
            List<String> tracerWords =
                    words.subList(with + 1, words.size()).stream()
                            .filter(word -> !word.equals("with"))
                            .toList();
            tracer =
                    tracerWords.stream().anyMatch(NONE::contains)
                            ? SeenPart.NONE
                            : part(tracerWords, unread);
        }
        return new SeenColour(List.of(new Option(body, tracer)));
    }

    private SeenPart part(List<String> words, List<String> unread) {
        Set<String> letters = new TreeSet<>();
        boolean faded = false;
        boolean shade = false;
        List<String> open = new ArrayList<>(words);
        while (!open.isEmpty()) {
            String word = open.removeFirst();
            String next = open.isEmpty() ? "" : open.getFirst();
            if (names.containsKey(word + " " + next)) {
                letters.add(names.get(word + " " + open.removeFirst()));
            } else if (names.containsKey(word)) {
                letters.add(names.get(word));
            } else if (isShade(word)) {
                boolean isOfName = names.containsKey(next);
                faded |= isOfName && !word.equals("dark");
                if (!isOfName) {
                    letters.addAll(shade(word));
                    shade = true;
                }
            } else if (OLD.contains(word)) {
                faded = true;
            } else if (catalogue.findColour(word.toUpperCase(Locale.ROOT)).isPresent()) {
                letters.add(word.toUpperCase(Locale.ROOT));
            } else if (!FILLERS.contains(word) && !UNKNOWN.contains(word)) {
                unread.add(word);
            }
        }
        return letters.isEmpty()
                ? SeenPart.UNKNOWN
                : new SeenPart(shade ? Kind.SHADE : Kind.NAMED, letters, faded);
    }

    private static boolean isShade(String word) {
        return word.equals("dark") || word.equals("light") || word.equals("pale");
    }

    private List<String> shade(String word) {
        boolean dark = word.equals("dark");
        return catalogue.coloursWithOwn().stream()
                .filter(
                        colour ->
                                dark
                                        ? brightness(colour) < DARK_BELOW
                                        : brightness(colour) >= LIGHT_FROM)
                .map(BaseColour::letters)
                .toList();
    }

    /** By the weights of red, green and blue in ITU-R BT.601. */
    private static int brightness(BaseColour colour) {
        int rgb = Integer.parseInt(colour.swatch(), 1, 7, 16);
        return (299 * (rgb >> 16) + 587 * (rgb >> 8 & 0xff) + 114 * (rgb & 0xff)) / 1_000;
    }
}
