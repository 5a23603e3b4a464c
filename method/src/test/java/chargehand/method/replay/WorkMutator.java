package chargehand.method.replay;

import static chargehand.method.replay.Steps.mm;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.part.Body;
import chargehand.part.End;
import java.util.Collections;
import java.util.Optional;
import java.util.Random;

/** Breaks one thing in how the work is held, what it is made of, or how far a cut goes. */
enum WorkMutator implements Breaking {
    /** Two set-ups change places. Harmless where neither needs what the other makes, as {@link Apart} tells. */
    SET_UPS_SWAPPED {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return method.setUps().size() < 2
                    ? Optional.empty()
                    : Sites.setUp(
                                    method,
                                    random,
                                    setUp -> setUp.number() < method.setUps().size())
                            .map(setUp -> new Mutant(
                                    Edits.in(method).setUps(all -> {
                                        Collections.swap(all, setUp.number() - 1, setUp.number());
                                        return all;
                                    }),
                                    Apart.are(setUp, method.setUps().get(setUp.number()))));
        }
    },

    /** A set-up is left out. */
    SET_UP_LEFT_OUT {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return method.setUps().size() < 2
                    ? Optional.empty()
                    : Sites.setUp(method, random, setUp -> true)
                            .map(setUp -> Edits.in(method).setUps(all -> {
                                all.remove(setUp.number() - 1);
                                return all;
                            }))
                            .map(Mutant::harmful);
        }
    },

    /** Two set-ups exchange their holdings. Harmless where these are the same. */
    HOLDING_EXCHANGED {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.setUp(
                            method,
                            random,
                            setUp -> setUp.number() < method.setUps().size())
                    .map(setUp -> {
                        SetUp next = method.setUps().get(setUp.number());
                        Method one = Edits.in(method).holding(setUp.number(), held -> next.holding());
                        return new Mutant(
                                Edits.in(one).holding(next.number(), held -> setUp.holding()),
                                next.holding().equals(setUp.holding()));
                    });
        }
    },

    /** The centre or steady at the outer end is left out. Harmless where little stands out: three diameters. */
    SUPPORT_LEFT_OUT {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.setUp(method, random, setUp -> Supports.isSupported(setUp.holding()))
                    .map(setUp -> new Mutant(
                            Edits.in(method).holding(setUp.number(), Supports::unsupported),
                            Supports.standsOutLittle(method, setUp)));
        }
    },

    /** Said to run truer than it can. Harmless where it is held by nothing that turns. */
    TOO_TRUE {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.setUp(method, random, setUp -> setUp.holding().runOut().isMoreThan(mm(0.002)))
                    .map(setUp -> Edits.in(method).holding(setUp.number(), Supports::truer))
                    .map(Mutant::harmful);
        }
    },

    /** A bar a fifth thinner. */
    STOCK_THINNER {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return method.stock().blank() instanceof Blank.RoundBar bar
                    ? Optional.of(Mutant.harmful(Edits.in(method)
                            .blank(new Blank.RoundBar(
                                    bar.from(), bar.to(), bar.diameter().times(0.8), bar.onBar()))))
                    : Optional.empty();
        }
    },

    /** A blank that ends within the part. */
    STOCK_SHORTER {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return method.stock().blank() instanceof Blank.RoundBar bar
                    ? Optional.of(Mutant.harmful(
                            Edits.in(method).blank(new Blank.RoundBar(mm(0.5), bar.to(), bar.diameter(), bar.onBar()))))
                    : Optional.empty();
        }
    },

    /** A thread stops a millimetre short. */
    THREAD_SHORT {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.cut() instanceof Cut.ThreadOutside)
                    .map(site -> Edits.in(method).cut(site.setUp(), site.number(), WorkMutator::shortened))
                    .map(Mutant::harmful);
        }
    },

    /** A hole is drilled two millimetres short. Harmless where a later cut opens it, or it came out further than that. */
    HOLE_SHORT {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            throw new UnsupportedOperationException("needs the part");
        }

        @Override
        public Optional<Mutant> broken(Good good, Random random) {
            Method method = good.method();
            return Sites.any(method, random, site -> site.cut() instanceof Cut.DrillAxial)
                    .map(site -> new Mutant(
                            Edits.in(method).cut(site.setUp(), site.number(), WorkMutator::drilledShort),
                            Sites.after(method, site).stream().anyMatch(later -> opens(later.cut()))
                                    || comesOutStill((Cut.DrillAxial) site.cut(), good)));
        }
    },

    /** A hole across stands ten degrees round. */
    HOLE_ROUND {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.cut() instanceof Cut.DrillAcross)
                    .map(site -> Edits.in(method).cut(site.setUp(), site.number(), WorkMutator::round))
                    .map(Mutant::harmful);
        }
    },

    /** An edge is cut a fifth of a millimetre too large. */
    EDGE_LARGER {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.cut() instanceof Cut.FinishEdge)
                    .map(site -> Edits.in(method).cut(site.setUp(), site.number(), WorkMutator::largerEdge))
                    .map(Mutant::harmful);
        }
    },

    /** Parted off on the other side: the wrong piece falls. */
    PARTED_OTHER_SIDE {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.cut() instanceof Cut.PartOff)
                    .map(site -> Edits.in(method).cut(site.setUp(), site.number(), WorkMutator::otherSide))
                    .map(Mutant::harmful);
        }
    },

    /** A tool that another operation of the method uses, for another kind of cut. Harmless where it does this one too. */
    OTHERS_TOOL {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> Tools.isTold(site.cut()))
                    .flatMap(site -> Sites.any(method, random, other -> Tools.isOtherKind(site.cut(), other.cut()))
                            .map(other -> new Mutant(
                                    Edits.in(method)
                                            .settings(
                                                    site.setUp(),
                                                    site.number(),
                                                    set -> SettingsEdits.tool(
                                                            set,
                                                            other.settings().tool())),
                                    other.settings()
                                            .tool()
                                            .equals(site.settings().tool()))));
        }
    };

    abstract Optional<Mutant> broken(Method method, Random random);

    @Override
    public Optional<Mutant> broken(Good good, Random random) {
        return broken(good.method(), random);
    }

    private static Cut shortened(Cut cut) {
        Cut.ThreadOutside thread = (Cut.ThreadOutside) cut;
        return new Cut.ThreadOutside(thread.thread(), thread.from(), thread.to().minus(mm(1)), thread.way());
    }

    private static Cut drilledShort(Cut cut) {
        Cut.DrillAxial drill = (Cut.DrillAxial) cut;
        Length to = drill.end().from(drill.to(), mm(2));
        return new Cut.DrillAxial(drill.end(), drill.diameter(), to);
    }

    private static boolean comesOutStill(Cut.DrillAxial drill, Good good) {
        Length other =
                drill.end() == End.B ? Length.ZERO : ((Body.Turned) good.part().body()).length();
        return !drill.end()
                .other()
                .distance(other, drill.end().from(drill.to(), mm(2)))
                .isNegative();
    }

    private static boolean opens(Cut later) {
        return later instanceof Cut.DrillAxial
                || later instanceof Cut.BoreTo
                || later instanceof Cut.ReamTo
                || later instanceof Cut.PartOff
                || later instanceof Cut.FaceEnd;
    }

    private static Cut round(Cut cut) {
        Cut.DrillAcross hole = (Cut.DrillAcross) cut;
        return new Cut.DrillAcross(
                hole.at(), hole.diameter(), Angle.degrees(hole.around().degrees() + 10), hole.through(), hole.depth());
    }

    private static Cut largerEdge(Cut cut) {
        Cut.FinishEdge edge = (Cut.FinishEdge) cut;
        Cut.EdgeForm form = switch (edge.form()) {
            case Cut.EdgeForm.Chamfer(Length length, Angle angle) ->
                new Cut.EdgeForm.Chamfer(length.plus(mm(0.2)), angle);
            case Cut.EdgeForm.Radius(Length radius) -> new Cut.EdgeForm.Radius(radius.plus(mm(0.2)));
        };
        return new Cut.FinishEdge(edge.at(), edge.diameter(), edge.towards(), edge.inside(), form);
    }

    private static Cut otherSide(Cut cut) {
        Cut.PartOff part = (Cut.PartOff) cut;
        End other = part.partSide().other();
        return new Cut.PartOff(part.from(), part.to(), other);
    }
}
