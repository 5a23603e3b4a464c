/**
 * Reads a YAML text into a plain tree of texts that know their place, and forms out of that tree, gathering every fault
 * on the way. It knows nothing of what the file describes.
 *
 * <p>Only the plain part of YAML is taken: no anchors, no tags, no second document, no key twice.
 */
@NullMarked
package chargehand.part.yaml.tree;

import org.jspecify.annotations.NullMarked;
