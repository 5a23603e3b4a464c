package chargehand.trade.gear;

/** Which proportions of tooth are asked for; full depth differs between the pressure angles. */
enum Proportions {
    FULL,
    STUB,
    FINE
}
