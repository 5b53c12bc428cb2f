/** What everyone at the test must know, and what the results do not replace ("common practice"). */
export const cautionMessages = {
  "caution-caustic":
    "Fresh concrete is caustic. Wear gloves and eye protection, and rinse skin at once.",
  "caution-flammable":
    "Isopropyl alcohol is flammable. Keep flames and sparks away, and ventilate the place.",
  "caution-lifting": "The filled meter is heavy. Lift and roll it with care.",
  "caution-deferral":
    "These results support, and never replace, the project specification, the local codes and the judgement of the licensed engineer and the certified technician. Where they differ from this tool, they hold.",
} as const;
