package chargehand.drawing.stage;

import chargehand.part.End;
import java.util.List;

/**
 * Turned work at one set-up.
 *
 * @param title what the picture shows, for those who cannot see it
 * @param work before and after
 * @param hold how it is held
 * @param headstock the end of the part that points to the headstock, drawn at the left
 * @param surfaces what is cut in this set-up
 * @param settings the sizes that matter for setting, the most important first
 */
public record Stage(
        String title, Work work, Hold hold, End headstock, List<Surface> surfaces, List<SettingSize> settings) {
    public Stage {
        surfaces = List.copyOf(surfaces);
        settings = List.copyOf(settings);
    }
}
