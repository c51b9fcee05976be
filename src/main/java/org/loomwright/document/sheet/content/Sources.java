package org.loomwright.document.sheet.content;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;

/** Where figures come from, in words. */
public final class Sources {

    private Sources() {}

    /** @return status and source, for example {@code published: T1}; nothing twice */
    public static String words(Provenance provenance) {
        String status = provenance.status().words();
        String source = provenance.source();
        return source.isEmpty() || source.equals(status) ? status : status + ": " + source;
    }

    /** @return whether a reader must not take it for more than a recollection */
    public static boolean isFromMemory(@Nullable Provenance provenance) {
        return provenance != null && provenance.status() == Status.MEMORY;
    }
}
