import type { Call } from '../../language';

/** Says which conductor temperature a function took when the sheet named none. */
export function assumeTemperature(call: Call, temperatureC: number, why: string): void {
  if (!call.given('temperature')) {
    call.assume(`temperature ${temperatureC} °C taken: ${why}`);
  }
}
