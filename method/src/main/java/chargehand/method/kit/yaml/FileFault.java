package chargehand.method.kit.yaml;

import chargehand.part.yaml.tree.Fault;

/**
 * A fault and the file it stands in.
 *
 * @param file the file's name, empty where the kit as a whole is at fault
 * @param fault what is wrong, with its place
 */
public record FileFault(String file, Fault fault) {}
