/**
 * The written form of a part: a YAML file as a turner would write it, read with every fault told in one go, and written
 * back. What is wrong with the layout is told by {@code tree}, what is wrong with the shape by {@code check}.
 */
@NullMarked
package chargehand.part.yaml;

import org.jspecify.annotations.NullMarked;
