import { defineProblems } from './contract';

export const tradeProblems = defineProblems('Trade functions', {
  'too-few-givens': {
    means: 'The function cannot work with what is given.',
    why: 'Each formula needs a number of known values; none is made up.',
    remedy: 'Give one more of what the message names.',
    example: 'element = heater(voltage: 208 V)',
  },
  'too-many-givens': {
    means: 'Values are given that exclude or could contradict one another.',
    why: 'Which of them holds is not for a program to say.',
    remedy: 'Leave one out; compare it with the result in a `check`.',
    example: 'element = heater(resistance: 11.9 Ω, voltage: 208 V, rated_voltage: 240 V, rated_power: 5 kW)',
  },
  'mixed-units': {
    means: 'Values that are set against each other are of different kinds.',
    why: 'Volts and amperes have no common mean.',
    remedy: 'Give all of them in the same kind of unit.',
    example: 'u = unbalance(208 V, 210 V, 12 A)',
  },
  'wrong-power': {
    means: 'The size of a load is given in a form that its kind does not go by.',
    why: 'A motor is sized by its horsepower and the table, a transformer by its kVA, not by what they draw at the moment.',
    remedy: 'Give it in the unit that the message names.',
    example: 'fan = circuit\n  load: 5 kVA\n  kind: motor\n  voltage: 208 V\n  phases: 3\n  material: Cu',
  },
  'not-for-this-kind': {
    means: 'A field is given that this kind of circuit has no use for.',
    why: 'A nameplate value that is ignored would look as if it had counted.',
    remedy: 'Take it out, or give the kind that it belongs to.',
    example:
      'kiln = circuit\n  load: 17 A\n  continuous: yes\n  kind: general\n  voltage: 208 V\n  material: Cu\n  duty: 20 %',
  },
  'not-with-apparent-power': {
    means: 'A power factor or an efficiency is given along with VA.',
    why: 'Apparent power holds it already; it would be counted twice.',
    remedy: 'Leave it out, or give the load in W.',
    example: 'amps = line_current(5 kVA, 240 V, power_factor: 0.9)',
  },
  'not-in-table': {
    means: 'The table has no row for this.',
    why: 'A row that is not printed is not made up.',
    remedy: 'Take a value that the table has; the message names some where it can.',
    example: 'fill = raceway_fill([12 AWG Cu THHN], EMT, "5/8")',
  },
  'not-covered': {
    means: 'The rule does not reach this case.',
    why: 'A rule stretched beyond its wording gives a figure that no authority stands behind.',
    remedy: 'Take the way that the message names.',
    example: 'demand = range_demand(2, 30 kW)',
  },
  'no-standard-size': {
    means: 'No standard size or rating is large enough, or small enough.',
    why: 'The list of standard ratings ends there.',
    remedy: 'Part the load, run in parallel, or look for equipment beyond the list.',
    example: 'device = ocpd_for(9000 A)',
  },
  'no-sufficient-size': {
    means: 'No single conductor of the tables does.',
    why: 'The table ends; a larger conductor is not assumed.',
    remedy: 'Run in parallel, shorten the run, or raise the voltage.',
    example: 'wire = conductor_for(2000 A)',
  },
  'not-at-that-temperature': {
    means: 'A temperature is given for figures that hold at one temperature alone.',
    why: 'The printed impedances are those at 75 °C.',
    remedy: 'Leave the temperature out, or leave the raceway out and take the DC resistance at that temperature.',
    example: 'drop = voltage_drop(6 AWG Cu, 40 A, 120 ft, raceway: EMT, temperature: 60 °C)',
  },
  'raceway-missing': {
    means: 'A power factor is given and no raceway.',
    why: 'It acts on the reactance, and that hangs on the raceway.',
    remedy: 'Name the raceway, or leave the power factor out.',
    example: 'drop = voltage_drop(6 AWG Cu, 40 A, 120 ft, power_factor: 0.9)',
  },
  'ambient-too-hot': {
    means: 'It is so warm around the conductor that it may carry nothing.',
    why: 'Insulation that is at its limit already has no room for the heat of a current.',
    remedy: 'Take insulation for a higher temperature, or lead the run elsewhere.',
    example: 'allowed = ampacity(12 AWG Cu TW, ambient: 70 °C)',
  },
  'unknown-terminal-rating': {
    means: 'Terminals are given a temperature that the ampacity table has no column for.',
    why: 'Terminals are marked 60 °C, 75 °C or 90 °C.',
    remedy: 'Write the marking.',
    example: 'allowed = ampacity(6 AWG Cu THHN, terminals: 80 °C)',
  },
  'leads-exceed-reading': {
    means: 'The meter leads are given more resistance than was read with them.',
    why: 'What is left for the conductor would be less than nothing.',
    remedy: 'Check both readings, and zero the leads.',
    example: 'left = conductor_length(0.12 Ω, 12 AWG Cu stranded, leads: 0.2 Ω)',
  },
  'price-missing': {
    means: 'A price list lacks a conductor that is counted.',
    why: 'A total without it would be too low.',
    remedy: 'Add the conductor and its price to the list.',
    example: 't = takeoff([10 AWG Cu THHN], [50 ft], priced: [12 AWG Cu THHN], prices: [0.61 USD/ft])',
  },
});
