/** An amount to the cent with thousands parted, and its currency behind it where one is given: `1,234.50 USD`. */
export const showMoney = (amount: number, currency?: string): string =>
  amount.toFixed(2).replace(/\B(?=(\d{3})+\.)/g, ',') + (currency === undefined ? '' : ` ${currency}`);
