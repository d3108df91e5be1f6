/** Tables as comma-separated values (RFC 4180), with the habits of spreadsheet programs understood. */
package crumbclock.formats.csv;
