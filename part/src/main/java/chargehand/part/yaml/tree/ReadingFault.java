package chargehand.part.yaml.tree;

/** What can be wrong with a file before it is asked what it means. */
public enum ReadingFault {
    /** Not laid out as YAML. */
    LAYOUT,
    /** Longer than any file of its kind. */
    TOO_LONG,
    /** More levels of keys and lists than any file of its kind. */
    TOO_DEEP,
    /** An anchor, a reference to one, a tag, or a second document. */
    NOT_PLAIN,
    /** The same key twice in one place. */
    KEY_TWICE,
    /** A key that is not known here. */
    KEY_UNKNOWN,
    /** A key that must be there. */
    KEY_MISSING,
    /** Two keys of which only one can stand. */
    KEYS_CLASH,
    /** Nothing written under a key. */
    NOTHING_WRITTEN,
    /** A list, a group of keys or a single value where another of them is wanted. */
    WRONG_KIND,
    /** A value that does not read as what it should be. */
    UNREADABLE
}
