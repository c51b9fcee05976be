package org.loomwright.store;

import org.loomwright.app.LoomContent;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Hand;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.exchange.CanonicalJson;
import org.loomwright.exchange.LoomWriter;
import org.loomwright.testing.RandomLooms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Loom contents for tests, with their true hashes. */
final class Contents {

    private Contents() {}

    static LoomContent small(long seed) {
        return of(RandomLooms.documentOf(seed, RandomLooms.Size.SMALL));
    }

    static LoomContent of(LoomDocument document) {
        return new LoomContent(CanonicalJson.of(LoomWriter.write(document)).hash(), document);
    }

    /** @return a document in which every column that may be empty is empty somewhere and filled elsewhere, in no order */
    static LoomDocument varied(long seed, RandomLooms.Size size) {
        LoomDocument document = RandomLooms.documentOf(seed, size);
        Random random = new Random(seed);
        List<Segment> segments = new ArrayList<>();
        for (Segment segment : document.segments()) {
            segments.add(varied(segment, random));
        }
        Collections.shuffle(segments, random);
        return new LoomDocument(
                "Loom No. 7 “İı” " + seed,
                vehicle(random),
                document.datum(),
                document.nodes().reversed(),
                segments,
                document.devices().reversed(),
                document.wires().reversed(),
                document.checks());
    }

    private static VehicleSheet vehicle(Random random) {
        return new VehicleSheet(
                "Averley Ten",
                1934 + random.nextInt(30),
                Hand.values()[random.nextInt(2)],
                EarthPolarity.values()[random.nextInt(2)],
                Voltage.ofMillivolts(random.nextBoolean() ? 6_000 : 12_000),
                List.of("Second remark?", "A remark", "A remark"));
    }

    private static Segment varied(Segment segment, Random random) {
        boolean woven = random.nextBoolean();
        Finish finish =
                new Finish(
                        woven ? "cotton-braid" : "none",
                        woven ? "B" : null,
                        woven ? List.of("R", "G", "R") : List.of(),
                        woven ? 11 : null,
                        random.nextInt(4),
                        new Evidence(
                                EvidenceKind.values()[random.nextInt(EvidenceKind.values().length)],
                                woven ? "under the clip" : ""));
        return new Segment(
                segment.id(),
                segment.from(),
                segment.to(),
                segment.length(),
                List.of(segment.length(), Length.ofMillimetres(7), segment.length()),
                random.nextBoolean() ? new Departure(12, 180) : null,
                segment.bendDegrees(),
                finish,
                segment.openings());
    }
}
