package chargehand.method.rack.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Rack;
import chargehand.method.rack.Shape;
import org.junit.jupiter.api.Test;

final class DemoRackTest {
    @Test
    void read_demoRack_everyPiece() {
        Rack rack = DemoKit.soundRack();
        assertThat(rack.pieces()).hasSize(40);
        assertThat(rack.pieces())
                .filteredOn(piece -> piece.sure() == Piece.Sureness.UNKNOWN)
                .hasSize(3);
        assertThat(rack.pieces())
                .filteredOn(piece -> piece.shape() instanceof Shape.Flat)
                .hasSize(6);
    }

    @Test
    void read_demoRack_onePieceAsWritten() {
        Piece piece = DemoKit.soundRack().find("c2").orElseThrow();
        assertThat(piece.says()).isEqualTo("gunmetal LG2, 1 1/4 round, rack C, top");
        assertThat(piece.length().length()).isEqualTo(Length.in(18));
        assertThat(piece.condition()).isEqualTo(Piece.Condition.BRIGHT);
        assertThat(piece.price()).hasValue(14.5);
        assertThat(piece.note()).isEqualTo("turned stick");
    }
}
