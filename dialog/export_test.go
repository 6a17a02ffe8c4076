package dialog

// TellApart is tellApart, for the tests outside.
var TellApart = tellApart
