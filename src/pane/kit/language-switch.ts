import { chooseLanguage } from "../../messages/chosen-language";
import { LANGUAGE_NAMES, LANGUAGES } from "../../messages/language";
import { speech } from "../../messages/speech";
import { button } from "./element";

/**
 * A button for each other language, with the name that the language has for itself, so that it is found
 * by those who cannot read the one in use.
 *
 * @param onChosen Told when another language is spoken.
 */
export function languageSwitch(onChosen: () => void): HTMLElement[] {
  const others = LANGUAGES.filter((language) => language !== speech().language);
  return others.map((language) => {
    const choose = () => {
      chooseLanguage(language);
      onChosen();
    };
    const made = button(LANGUAGE_NAMES[language], choose, "language");
    made.lang = language;
    return made;
  });
}
