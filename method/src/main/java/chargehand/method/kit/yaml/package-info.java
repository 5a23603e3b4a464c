/**
 * The written form of the kit: one YAML file for each machine and one or more for the tooling. Every fault in every file is
 * told in one go, each with its place.
 */
@NullMarked
package chargehand.method.kit.yaml;

import org.jspecify.annotations.NullMarked;
