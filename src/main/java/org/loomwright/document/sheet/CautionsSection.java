package org.loomwright.document.sheet;

import org.loomwright.document.pdf.Flow;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.List;

/** What must be thought of before the loom goes near a battery. */
final class CautionsSection {

    private static final List<String> CAUTIONS =
            List.of(
                    "Disconnect the battery before any work on the vehicle, the earth lead first,"
                            + " and keep it disconnected until the last test is passed.",
                    "Every new feed is fused as near to its source as it can be; a feed that was"
                            + " unfused as original is shown as such and is still a risk.",
                    "Where the loom goes through a panel it lies in a grommet that fits, with"
                            + " nothing sharp to touch it.",
                    "Test the insulation only with radios, flasher units, regulators and all other"
                            + " electronics unplugged.",
                    "First power-up through a low-rated fuse or a lamp in the battery lead, one"
                            + " circuit after the other, with somebody watching.",
                    "Check the earth polarity on the first page against the vehicle before anything"
                            + " that has a polarity is connected.",
                    "Braid lacquer and varnish and their thinners are flammable and bad to breathe:"
                            + " away from flames and sparks, with fresh air, until dry.");

    private CautionsSection() {}

    /** On a page that the sign-off shares. */
    static void set(Flow flow) {
        flow.makeRoom(flow.paper().bodyHeightPt());
        flow.section(Part.CAUTIONS.title());
        flow.text(
                "A loom carries enough energy to start a fire. Local codes, inspection rules and"
                        + " qualified practice come first.",
                Type.TEXT_STRONG,
                0);
        CAUTIONS.forEach(flow::bullet);
        flow.text(
                "All results on this sheet are estimates for planning. No finding, and no absence"
                        + " of a finding, is a clearance. Measure before you order and before you"
                        + " cut.");
    }
}
