/* Decodes the first seconds of a recording with the recogniser's library for Windows and prints what it heard.
   usage: decode FOLDER-OF-THE-LIBRARY MODEL RECORDING SECONDS [short]
   The model's path is handed to the library as the process got it: in the code page. "short" asks Windows for its short
   name first, as Readback does. Ends with 3 when the model cannot be opened. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <windows.h>

typedef void *(*open_model)(const char *path);
typedef void *(*open_recogniser)(void *model, float rate, const char *phrases);
typedef int (*accept_sound)(void *recogniser, const char *bytes, int length);
typedef const char *(*give_result)(void *recogniser);
typedef void (*set_log)(int level);

static const char *PHRASES = "[\"r four ten a\", \"piston\", \"[unk]\"]";
enum { RATE = 16000, HEADER = 44 };

int main(int count, char **words) {
  if (count < 5) return 2;
  SetDllDirectoryA(words[1]);
  HMODULE library = LoadLibraryA("libvosk.dll");
  if (!library) {
    printf("the library cannot be loaded: error %lu\n", GetLastError());
    return 4;
  }
  char model[MAX_PATH];
  snprintf(model, sizeof model, "%s", words[2]);
  if (count > 5 && strcmp(words[5], "short") == 0) {
    WCHAR wide[MAX_PATH], brief[MAX_PATH];
    MultiByteToWideChar(CP_ACP, 0, words[2], -1, wide, MAX_PATH);
    if (!GetShortPathNameW(wide, brief, MAX_PATH)) return 5;
    BOOL lost = FALSE;
    WideCharToMultiByte(20127 /* ASCII */, 0, brief, -1, model, sizeof model, NULL, &lost);
    printf("short name: %s\n", model);
  }
  if (count > 5 && strcmp(words[5], "utf8") == 0) {
    WCHAR wide[MAX_PATH];
    MultiByteToWideChar(CP_ACP, 0, words[2], -1, wide, MAX_PATH);
    WideCharToMultiByte(CP_UTF8, 0, wide, -1, model, sizeof model, NULL, NULL);
  }
  ((set_log)GetProcAddress(library, "vosk_set_log_level"))(-2);
  void *opened = ((open_model)GetProcAddress(library, "vosk_model_new"))(model);
  if (!opened) {
    printf("no model\n");
    return 3;
  }
  void *ear = ((open_recogniser)GetProcAddress(library, "vosk_recognizer_new_grm"))(opened, RATE, PHRASES);
  accept_sound accept = (accept_sound)GetProcAddress(library, "vosk_recognizer_accept_waveform");
  FILE *sound = fopen(words[3], "rb");
  if (!ear || !sound) return 6;
  fseek(sound, HEADER, SEEK_SET);
  static char bytes[RATE / 10 * 2];
  for (int tenth = 0; tenth < 10 * atoi(words[4]); tenth++) {
    size_t length = fread(bytes, 1, sizeof bytes, sound);
    if (accept(ear, bytes, (int)length))
      printf("%s\n", ((give_result)GetProcAddress(library, "vosk_recognizer_result"))(ear));
  }
  printf("%s\n", ((give_result)GetProcAddress(library, "vosk_recognizer_final_result"))(ear));
  return 0;
}
