/** The written form of the rack: one YAML file, every fault in it told in one go with its place. */
@NullMarked
package chargehand.method.rack.yaml;

import org.jspecify.annotations.NullMarked;
