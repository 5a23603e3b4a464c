package chargehand.part.yaml;

import chargehand.part.check.PartRemark;

/**
 * Something to think about in a part file that can stand as it is.
 *
 * @param line counted from 1
 * @param column counted from 1
 * @param path the keys that lead to it, list entries counted from 1: {@code outside[2].thread}
 * @param code what it is
 * @param say a plain sentence
 */
public record Remark(int line, int column, String path, PartRemark code, String say) {}
