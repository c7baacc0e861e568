/** Room for the last bits of a product such as 16 A × 125 %, which must count as 20 A; relative. */
export const lastBits = 1e-9;

/** True when `value` is not below `wanted`, last bits aside. */
export const reaches = (value: number, wanted: number): boolean => value >= wanted * (1 - lastBits);
