namespace EightOhm.Cli.Tests;

public sealed class SaveTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_second_run_saves_the_same_bytes()
    {
        var notebook = shop.Notebook("a", "Console.WriteLine(\"one\");\nConsole.WriteLine(\"two\");\n\"Ω\"", ";", "Console.Error.Write(\"e\"); 4.0");

        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks, "--save")).Code);
        var first = shop.Everything();
        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks, "--save")).Code);

        Assert.Equal(first, shop.Everything());
        Assert.Contains("\"Ω\"", await File.ReadAllTextAsync(notebook), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Outputs_have_the_formats_own_shapes_and_counts()
    {
        var notebook = shop.Notebook("a", "Console.WriteLine(\"one\");\nConsole.WriteLine(\"two\");\n\"three\"", "", "\"five\"");

        await shop.RunAsync(shop.Notebooks, "--save");

        var outputs = Workshop.SavedOutputs(notebook);
        Assert.Equal("""{"name":"stdout","output_type":"stream","text":["one\n","two\n"]}""", outputs[1][0]!.ToJsonString());
        Assert.Equal("""{"data":{"text/plain":["three"]},"execution_count":2,"metadata":{},"output_type":"execute_result"}""", outputs[1][1]!.ToJsonString());
        Assert.Empty(outputs[2]);
        Assert.Equal(3, (int)outputs[3][0]!["execution_count"]!);
    }

    [Fact]
    public async Task A_display_that_is_updated_keeps_its_place_and_its_last_value()
    {
        var notebook = shop.Notebook(
            "a",
            "var shown = \"before\".DisplayAs(\"text/plain\");\nConsole.Write(\"after\");",
            "shown.Update(\"now\");");

        await shop.RunAsync(shop.Notebooks, "--save");

        var outputs = Workshop.SavedOutputs(notebook);
        Assert.Equal("""{"data":{"text/plain":["now"]},"metadata":{},"output_type":"display_data"}""", outputs[1][0]!.ToJsonString());
        Assert.Empty(outputs[2]);
    }

    [Fact]
    public async Task JSON_values_stay_objects()
    {
        var notebook = shop.Notebook(
            "a", "\"{\\\"a\\\":1}\".DisplayAs(\"application/vnd.x+json\");");

        await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal(1, (int)Workshop.SavedOutputs(notebook)[1][0]!["data"]!["application/vnd.x+json"]!["a"]!);
    }

    [Fact]
    public async Task A_value_that_only_claims_to_be_JSON_is_kept_as_text()
    {
        var notebook = shop.Notebook(
            "a", "\"{\".DisplayAs(\"application/json\");");

        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks, "--save")).Code);

        Assert.Equal("{", (string?)Workshop.SavedOutputs(notebook)[1][0]!["data"]!["application/json"]![0]);
    }

    [Fact]
    public async Task What_is_not_an_output_is_kept_as_it_was()
    {
        var notebook = shop.File("a.ipynb", """
            {
             "cells": [
              {
               "attachments": {
                "p.png": {
                 "image/png": "AAAA"
                }
               },
               "cell_type": "markdown",
               "id": "aa",
               "metadata": {
                "tags": [
                 "x"
                ]
               },
               "source": [
                "# Hi\n",
                "there"
               ]
              },
              {
               "cell_type": "raw",
               "id": "bb",
               "metadata": {},
               "source": "kept <as> it is & 'so'"
              }
             ],
             "metadata": {
              "own": 1.50
             },
             "nbformat": 4,
             "nbformat_minor": 5
            }

            """);
        var before = await File.ReadAllTextAsync(notebook);

        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks, "--save")).Code);

        Assert.Equal(before, await File.ReadAllTextAsync(notebook));
    }
}
