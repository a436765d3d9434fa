/** Where the sun stands, and what a tilted face gets of it under a clear sky. Angles in radians, solar time. */

/** W/m² outside the air, and loss in it: 0.7 to the power of the air mass to the power of 0.678 [meinel-1976]. */
const OUTSIDE = 1353;
const THROUGH = 0.7;
const BENT = 0.678;
/** Light from the sky beside the straight one, as a share of it: a tenth on a clear day [meinel-1976]. */
const SKY = 0.1;

/**
 * Sine of the height of the sun.
 *
 * @param latitude     north positive
 * @param declination  of the sun, -0.409 .. 0.409; 0 at the equinoxes
 * @param hour         angle of the hour: 0 at noon, 15° an hour, afternoon positive
 * @returns 1, negative at night. Spherical trigonometry, textbook
 */
export function sunHeightSine(latitude: number, declination: number, hour: number): number {
    return Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(hour);
}

/**
 * Cosine of the angle between the sun and the normal of a tilted face.
 *
 * @param latitude     north positive
 * @param declination  of the sun
 * @param hour         angle of the hour
 * @param tilt         0 flat .. π/2 upright
 * @param azimuth      0 south, west positive, ± π north
 * @returns 1, negative behind the face. Source: [duffie-beckman]
 */
export function sunOnFace(latitude: number, declination: number, hour: number, tilt: number, azimuth: number): number {
    const { sin, cos } = Math;
    return sin(declination) * (sin(latitude) * cos(tilt) - cos(latitude) * sin(tilt) * cos(azimuth))
        + cos(declination) * cos(hour) * (cos(latitude) * cos(tilt) + sin(latitude) * sin(tilt) * cos(azimuth))
        + cos(declination) * sin(tilt) * sin(azimuth) * sin(hour);
}

/**
 * Straight light of a clear sky at the ground, at sea level.
 *
 * @param heightSine  1, sine of the sun's height
 * @returns W/m² on a face that looks at the sun; 0 at night. ± 10 % on clear days. Source: [meinel-1976]; air mass [kasten-young-1989]
 */
export function clearSky(heightSine: number): number {
    if (heightSine <= 0) return 0;
    const degrees = Math.asin(Math.min(1, heightSine)) * 180 / Math.PI;
    const mass = 1 / (heightSine + 0.50572 * (degrees + 6.07995) ** -1.6364);
    return OUTSIDE * THROUGH ** (mass ** BENT);
}

/**
 * Light on a tilted face under a clear sky.
 *
 * @returns W/m²: the straight light on the face and a tenth of it from the sky. Inputs as {@link sunOnFace}
 */
export function clearSkyOnFace(latitude: number, declination: number, hour: number, tilt: number, azimuth: number): number {
    const straight = clearSky(sunHeightSine(latitude, declination, hour));
    const face = sunOnFace(latitude, declination, hour, tilt, azimuth);
    return straight * ((face < 0 ? 0 : face) + SKY * (1 + Math.cos(tilt)) / 2);
}
