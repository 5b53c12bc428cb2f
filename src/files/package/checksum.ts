const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/** The checksum (CRC-32, as ISO 3309 has it) with which a package tells damaged parts. */
export function checksumOf(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) value = (value >>> 8) ^ TABLE[(value ^ byte) & 0xff]!;
  return ~value >>> 0;
}
