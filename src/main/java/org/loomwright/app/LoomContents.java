package org.loomwright.app;

import org.loomwright.core.loom.LoomDocument;

import java.util.Optional;

/** Everything that any loom, specification or revision consists or consisted of, by content hash. */
public interface LoomContents {

    /**
     * @param hash a content hash
     * @return the ordered document, if it is kept
     */
    Optional<LoomDocument> find(String hash);

    /**
     * @param hash a content hash
     * @return the ordered document
     * @throws NotFoundException if it is not kept
     */
    LoomDocument get(String hash);
}
