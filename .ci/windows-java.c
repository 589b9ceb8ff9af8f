/* Stands in for java.exe: prints its arguments, one a line, and ends with the number behind "exit=". */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int main(int count, char **words) {
  int code = 0;
  for (int i = 1; i < count; i++) {
    printf("%s\n", words[i]);
    if (strncmp(words[i], "exit=", 5) == 0) code = atoi(words[i] + 5);
  }
  return code;
}
