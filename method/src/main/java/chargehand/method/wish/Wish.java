package chargehand.method.wish;

/** One thing that a method must do or must do without, because somebody says so. Names are as the kit, the rack and the part give them. */
public sealed interface Wish {
    /** The wish as it is written and read again, such as {@code without small lathe}. */
    String says();

    /** Nothing is done on this machine. */
    record WithoutMachine(String machine) implements Wish {
        @Override
        public String says() {
            return "without " + machine;
        }
    }

    /** Nothing is held in this chuck, collet, vice or head of a machine, or between its centres. */
    record WithoutHolder(String machine, String holder) implements Wish {
        @Override
        public String says() {
            return "without " + holder + " of " + machine;
        }
    }

    /** In one set-up at least the work is held by this finished section or bore. */
    record HeldBy(String feature) implements Wish {
        @Override
        public String says() {
            return "with grip on " + feature;
        }
    }

    /** The work is never held by this finished section or bore. */
    record NotHeldBy(String feature) implements Wish {
        @Override
        public String says() {
            return "without grip on " + feature;
        }
    }

    /** It is made from this piece on the rack. */
    record FromPiece(String piece) implements Wish {
        @Override
        public String says() {
            return "with stock " + piece;
        }
    }

    /** It is not made from this piece on the rack. */
    record NotFromPiece(String piece) implements Wish {
        @Override
        public String says() {
            return "without stock " + piece;
        }
    }

    /** Nothing is parted off: the stock is sawn to length. */
    record WithoutParting() implements Wish {
        @Override
        public String says() {
            return "without parting off";
        }
    }

    /** All of one feature is made in an earlier set-up than anything of another. */
    record Before(String first, String then) implements Wish {
        @Override
        public String says() {
            return "with " + first + " before " + then;
        }
    }
}
