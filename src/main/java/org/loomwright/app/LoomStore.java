package org.loomwright.app;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.WireColour;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Keeps looms. Everything that writes needs a transaction around it. */
public interface LoomStore {

    /**
     * @param id a new id
     * @param name what it is called in lists
     * @param content what it consists of
     * @param at now
     * @return the loom, in version 1
     */
    StoredLoom create(UUID id, String name, LoomContent content, Instant at);

    /**
     * @param id of a loom
     * @param version the version that the change was made from
     * @param name what it is called from now on
     * @param content what it consists of from now on
     * @param at now
     * @return the changed loom
     * @throws NotFoundException if there is no such loom
     * @throws StaleVersionException if it was changed meanwhile
     */
    StoredLoom change(UUID id, long version, String name, LoomContent content, Instant at);

    /** @return the loom, if there is one with this id */
    Optional<StoredLoom> find(UUID id);

    /**
     * @param id of a loom
     * @return the loom
     * @throws NotFoundException if there is no such loom
     */
    StoredLoom get(UUID id);

    /**
     * @param after the place where the page starts, null for the newest
     * @param size things on the page
     * @return looms, newest first
     */
    Page<LoomSummary> list(@Nullable PageKey after, int size);

    /**
     * @param colour body and tracer; without a tracer only plain wires count
     * @param after the place where the page starts, null for the newest
     * @param size things on the page
     * @return the looms that now have a wire of this colour, newest first
     */
    Page<LoomSummary> listHavingColour(WireColour colour, @Nullable PageKey after, int size);

    /**
     * @param wireSize designation of a conductor size
     * @param after the place where the page starts, null for the newest
     * @param size things on the page
     * @return the looms that now have a wire of this size, newest first
     */
    Page<LoomSummary> listHavingSize(String wireSize, @Nullable PageKey after, int size);
}
