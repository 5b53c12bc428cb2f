import { FOR_OTHER_SITES, KEPT_SHORTLY } from "../served-headers.mjs";

const HEADERS = Object.entries({ ...FOR_OTHER_SITES, ...KEPT_SHORTLY });

/**
 * Files that tell common static hosts to send the headers that Excel needs, by name. Each host reads
 * its own and serves the others as files that nobody asks for.
 *
 * @returns {Record<string, string>}
 */
export function hostFiles() {
  return {
    // Hosts that read a _headers file
    _headers: `/*\n${HEADERS.map(([name, value]) => `  ${name}: ${value}\n`).join("")}`,
    // Apache, with mod_headers
    ".htaccess": `<IfModule mod_headers.c>\n${HEADERS.map(
      ([name, value]) => `  Header set ${name} "${value}"\n`,
    ).join("")}</IfModule>\nAddType application/json .json\nAddType text/javascript .js\n`,
    // IIS
    "web.config": `<?xml version="1.0" encoding="utf-8"?>
<configuration>
  <system.webServer>
    <httpProtocol>
      <customHeaders>
${HEADERS.map(([name, value]) => `        <add name="${name}" value="${value}" />\n`).join("")}      </customHeaders>
    </httpProtocol>
    <staticContent>
      <remove fileExtension=".json" />
      <mimeMap fileExtension=".json" mimeType="application/json" />
    </staticContent>
  </system.webServer>
</configuration>
`,
    // Static web apps that read a configuration file
    "staticwebapp.config.json": `${JSON.stringify({ globalHeaders: Object.fromEntries(HEADERS) }, null, 2)}\n`,
    // To be included in the server section of nginx
    "headers-nginx.conf": HEADERS.map(([name, value]) => `add_header ${name} "${value}";\n`).join(
      "",
    ),
    // Hosts that would leave out files whose names begin with an underscore
    ".nojekyll": "",
  };
}
