/**
 * What can be done with Loomwright? Use cases, one transaction each, and the interfaces of the stores that they need.
 *
 * <p>A <em>head</em> (loom, specification) changes and carries a version; <em>content</em> never changes and is named by its hash;
 * a <em>revision</em> and the events of a work order are written once. Refusals are one small family of unchecked exceptions under
 * {@link org.loomwright.app.RefusalException}. May depend on core and on Spring's annotations for beans and transactions. Start
 * with {@link org.loomwright.app.LoomStore}.
 */
@NullMarked
package org.loomwright.app;

import org.jspecify.annotations.NullMarked;
