/** JSON files: parsing with line numbers, checking against the shipped schemas, binding to records, and writing. */
package crumbclock.formats.json;
