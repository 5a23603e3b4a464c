package chargehand.paper.sheet;

import chargehand.drawing.picture.Picture;

/**
 * A stretch of a sheet that stays together on one page.
 *
 * @param picture as wide as the text, as high as it needs
 */
record Row(Picture picture) {
    double height() {
        return picture.height();
    }
}
