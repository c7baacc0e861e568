import { defineFunction } from '../../language';
import { transformerDevice, transformerProtections } from '../rules/transformer-device';

export const transformer_ocpd = defineFunction({
  name: 'transformer_ocpd',
  summary: 'Largest overcurrent device for a transformer of 1000 V and less.',
  parameters: {
    current: { unit: 'A', symbol: 'I', above: 0, meaning: 'rated current on the side of the device' },
    protection: {
      choice: transformerProtections,
      named: true,
      default: 'primary_only',
      meaning: 'primary device alone, primary device with one on the secondary, or that secondary device',
    },
  },
  result: { unit: 'A', meaning: 'largest standard rating' },
  formula: 'I_limit = k * I',
  assumptions: [
    'protects the transformer alone: its conductors need protection of their own',
    'standard breaker ratings; ratings that only fuses have are left out',
  ],
  sources: ['NEC Table 450.3(B)', 'NEC 240.6(A)'],
  examples: [
    { text: 'transformer_ocpd(36.08 A)', gives: '50 A' },
    { text: 'transformer_ocpd(36.08 A, protection: primary_with_secondary)', gives: '90 A' },
  ],
  evaluate: ({ current, protection }, call) => transformerDevice(call, current, protection),
});
