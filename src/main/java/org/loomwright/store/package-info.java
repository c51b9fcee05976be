/**
 * Where does everything live? PostgreSQL behind the interfaces that {@code app} names: heads, revisions and work orders as entities
 * that never leave this package, loom content as plain SQL in {@code content}.
 *
 * <p>A change to a head is one {@code update} that asks for the version it was made from; the number of changed rows decides. Lists
 * page by key. Transactions begin in {@code app}. May depend on app's interfaces, core and Spring's data access. Start with {@link
 * org.loomwright.store.JpaLoomStore}.
 */
@NullMarked
package org.loomwright.store;

import org.jspecify.annotations.NullMarked;
