package chargehand.method.search;

import chargehand.measure.WorkTime;
import chargehand.method.plan.Method;

/**
 * A method found without looking ahead.
 *
 * @param method not yet replayed
 * @param counted its time, with the minute for each place that its stock stands further down the list
 */
public record PlainMethod(Method method, WorkTime counted) {}
