/** Bytes as text that survives JSON. The platform's own functions take one character a byte. */
export function toBase64(bytes: Uint8Array): string {
  const step = 0x8000; // More arguments than this overflow some engines' stacks.
  let binary = '';
  for (let i = 0; i < bytes.length; i += step) {
    binary += String.fromCharCode(...bytes.subarray(i, i + step));
  }
  return btoa(binary);
}

export function fromBase64(text: string): Uint8Array {
  const binary = atob(text);
  const bytes = new Uint8Array(binary.length);
  for (let i = 0; i < binary.length; i++) {
    bytes[i] = binary.charCodeAt(i);
  }
  return bytes;
}
